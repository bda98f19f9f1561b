/**
 * Do the holes of two parts go together: by drawing, by the way they are placed, as measured?
 *
 * <p>{@link org.fettlebench.holes.patterns.PositionZones} is the arithmetic of one fastener: zones
 * of position (DIAMETERS, as drawings give them) for clearance in all parts and for a tapped hole
 * in one, with and without a projected zone. A {@link org.fettlebench.holes.patterns.HolePattern}
 * in two {@link org.fettlebench.holes.patterns.PatternPart}s, whose holes land on their own, is a
 * {@link org.fettlebench.holes.patterns.PatternQuestion}; {@link
 * org.fettlebench.holes.patterns.Patterns} tells the chance that one rigid movement, shift and
 * turn, lets every fastener enter, the clearance that an asked chance needs, and how measured holes
 * go together. {@link org.fettlebench.holes.patterns.PatternDrawings} draws the last.
 *
 * <p>Play is how far the centres of two matching holes may lie apart (a RADIUS): with clearance in
 * both parts the mean of both holes less the fastener, with one tapped half of hole less fastener.
 * All lengths are {@code double} millimetres in the plane of the joint seen from above, angles
 * degrees anticlockwise. Fasteners are taken to stand square; a tapped hole that leans needs {@link
 * org.fettlebench.holes.patterns.PositionZones#leaning}.
 *
 * <p>The movement is found exactly (below 1e-6 mm for turns to 0.01 radians); a chance is simulated
 * with that inside each trial and carries its standard error; the same question gives the same
 * answer on any machine. Sizes are above 0 and up to 100 000 mm, holes 1 to 500; anything else is
 * refused with an {@link java.lang.IllegalArgumentException} that names it. Everything is immutable
 * and may be used from any thread. No null is taken or returned.
 *
 * <p>Source of the zones: ASME Y14.5, appendix on formulas for positional tolerancing.
 */
@Export
@Version("1.0.0")
package org.fettlebench.holes.patterns;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
