/**
 * A page of the desktop, as a bundle contributes it, and what the window offers to it.
 *
 * <p>A bundle registers a {@link org.fettlebench.desktop.Page} as a service; it stands in the list
 * of pages at once, in the order it asks for, and goes when the service goes. The window calls
 * every method of a page on its own thread (the one that made the display), so a page must do long
 * work through {@link org.fettlebench.desktop.Desk#work} and never wait. What a page throws is
 * reported against its module and shown in its place; the other pages are not touched.
 *
 * <p>Lengths cross as {@link org.fettlebench.measure.Length}; {@link
 * org.fettlebench.desktop.Desk#show} writes them in the unit the person chose, and {@link
 * org.fettlebench.desktop.Desk#onLookChange} tells when that choice, the text size or the theme
 * changed. No argument and no result is null; absence is an empty list or an empty text. {@code
 * Page} is implemented by modules (methods may be added with a default only); {@code Desk} and
 * {@code Look} are implemented by the window alone.
 */
@Export
@Version("1.2.0")
package org.fettlebench.desktop;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
