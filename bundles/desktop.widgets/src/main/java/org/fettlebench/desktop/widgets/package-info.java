/**
 * Widgets that the pages share, so that lists, drawings, figures and verdicts look and behave the
 * same everywhere.
 *
 * <p>Every widget is made with a parent and the {@link org.fettlebench.desktop.Desk} (or its {@link
 * org.fettlebench.desktop.Look}); it takes fonts and colours from there, asks for them each time it
 * paints, and disposes of what it makes itself together with its control. All methods are called on
 * the window's thread unless a type says otherwise. Lengths are {@link
 * org.fettlebench.measure.Length}; drawings are in millimetres of the real thing, and what has a
 * constant size on paper (line widths, lettering, arrowheads) is in millimetres of paper.
 *
 * <p>What can be computed without a window is computed in types that know no window ({@link
 * org.fettlebench.desktop.widgets.ListModel}, {@link org.fettlebench.desktop.widgets.DrawingView},
 * {@link org.fettlebench.desktop.widgets.Figures}); those are immutable or pure and may be used on
 * any thread. Nothing here takes or returns null.
 */
@Export
@Version("1.2.0")
package org.fettlebench.desktop.widgets;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
