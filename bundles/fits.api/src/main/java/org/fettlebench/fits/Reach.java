package org.fettlebench.fits;

import java.util.OptionalDouble;

/**
 * How far a hole may be out in one direction.
 *
 * @param bearingDegrees the direction, anticlockwise from x
 * @param allowanceMm from the intended centre to where the allowed centres end in this direction;
 *     when the intended centre fails, less the way to the first allowed one; empty when there is
 *     none in this direction
 */
public record Reach(double bearingDegrees, OptionalDouble allowanceMm) {}
