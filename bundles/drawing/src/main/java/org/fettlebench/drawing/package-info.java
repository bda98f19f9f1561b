/**
 * Drawings in millimetres of the real thing, with the lines of ISO 128, independent of where they
 * are shown.
 *
 * <p>A {@link org.fettlebench.drawing.Drawing} is a list of items from the bottom up. Places and
 * radii are millimetres of the real thing (x to the right, y away from the reader, so upwards on
 * paper); line widths, lettering, markers and the offset of a dimension are millimetres on paper
 * and do not grow with the scale. Who draws says <em>what</em> a line or an area is ({@link
 * org.fettlebench.drawing.LineKind}, {@link org.fettlebench.drawing.Tone}); who shows it chooses
 * width, dash and shade, so that screen, paper and file look the same. Colour never carries meaning
 * alone: what governs a verdict is wider as well.
 *
 * <p>{@link org.fettlebench.drawing.SvgWriter} writes a drawing as text; {@link
 * org.fettlebench.drawing.Plotter} lowers it to strokes, fills and words for any other paper or
 * screen, whose letters a {@link org.fettlebench.drawing.Lettering} measures. {@link
 * org.fettlebench.drawing.Sketch} collects a drawing and belongs to one thread; everything else is
 * immutable and may be used from any. Nothing takes or returns null.
 */
@Export
@Version("1.4.0")
package org.fettlebench.drawing;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
