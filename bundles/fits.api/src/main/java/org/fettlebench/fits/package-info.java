/**
 * Seats, walls, heads and holes: will the head sit where the hole must go, and how far may the hole
 * be out?
 *
 * <p>A {@link org.fettlebench.fits.Seat} is the flat seen from above (x to the right, y away from
 * the reader), a {@link org.fettlebench.fits.SeatedHead} what bears on it, and a {@link
 * org.fettlebench.fits.SeatQuestion} both with the hole and the position error to be expected.
 * {@link org.fettlebench.fits.Seats} answers it. All figures are {@code double} millimetres and
 * radii of position error, never diameters of a zone; nothing is rounded but in the sentences of
 * cures.
 *
 * <p>The room at a centre is the least, over all features, of its distance less what is needed
 * there: for edges what bears (washer, washer face, or the circle that the head sweeps, or the
 * hexagon itself when it is set); for a wall what meets it at its height, be it washer, head or
 * spanner, and the fillet at its foot besides; for hole metal the hole's radius and the metal
 * wanted, on the upper face and on the far one, for hollows the same, for neighbours both circles.
 * Allowed centres are those with room of 0 or more. The allowance at an allowed centre is its room,
 * which is also its distance to the nearest centre that fails.
 *
 * <p>Results: figures are exact to 1e-6 mm for edges, arcs, walls and round neighbours; beside a
 * head that is set, arcs count as the chords of {@link org.fettlebench.fits.Outline#points()}, and
 * an open spanner is overrated by 0.1 per cent at most. {@link
 * org.fettlebench.fits.SeatAnswer#allowed()} is for drawing: its arcs are broken into chords. A
 * head that just touches has an allowance of 0, which does not foul. Answers depend on nothing but
 * the question; corners may be given either way round from any of them.
 *
 * <p>Inputs: co-ordinates and sizes up to 100 000 mm; outlines of three corners or more that
 * neither cross nor touch themselves. Anything else is refused with a {@link
 * org.fettlebench.fits.SeatException} that names the corner, the value and the remedy. {@link
 * org.fettlebench.fits.StationOutline} turns measured widths into an outline.
 *
 * <p>A {@link org.fettlebench.fits.PositionLaw} says where a hole lands, seen from its aim: the sum
 * of an {@link org.fettlebench.fits.ErrorLaw} for each step and of an offset. It gives the chance
 * of landing in a region such as the allowed centres, and the radius held at a confidence.
 *
 * <p>{@link org.fettlebench.fits.HoleMethods} lists ways of placing a hole from tables of kind
 * {@code hole-methods}: columns {@code id}, {@code title}, {@code steps} (parted by {@code |}) and
 * {@code sigma_mm}, the standard deviation of the error along x and along y, or {@code laws_mm}, a
 * law for each step. {@link org.fettlebench.fits.SeatDrawings} draws an answer. All three are found
 * as services. {@link org.fettlebench.fits.SeatWords} says an answer in sentences.
 *
 * <p>{@link org.fettlebench.fits.Spanners} come from tables of kind {@code spanners} with a header
 * key {@code spanner} ({@code ring}, {@code open} or {@code socket}): rows with {@code
 * across_flats}, {@code head_diameter} and {@code height} (each ending in {@code _mm} or {@code
 * _in}), or a rule in {@code times_flats} and {@code plus_mm}.
 *
 * <p>Everything is immutable and may be used from any thread. No null is taken or returned.
 */
@Export
@Version("1.4.0")
package org.fettlebench.fits;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
