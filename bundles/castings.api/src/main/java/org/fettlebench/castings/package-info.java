/**
 * Is there metal to finish it: where does the finished part lie in the rough casting, what comes
 * off each face, and what would have to give when it will not clean up?
 *
 * <p>A {@link org.fettlebench.castings.Casting} holds, for each face to be finished, its place on
 * the drawing and what was measured of the rough casting: spots of flat faces, centre and diameter
 * of round ones. {@link org.fettlebench.castings.Castings#place} finds the {@link
 * org.fettlebench.castings.Placing}: the shift and small turn of the finished part inside the
 * casting for which the least spare metal of all faces is as great as it can be, then the next
 * least, and so on, so that the placing is one and no face is starved for nothing.
 *
 * <p>Two frames, both x to the right, y away from the reader, z up: the drawing's, in which
 * finished sizes are given, and the rough one, in which spots are measured from whatever rough
 * datum suits. A placing carries the first into the second. All lengths are {@code double}
 * millimetres, turns degrees by the right-hand rule about x, y and z.
 *
 * <p><em>Comes off</em> at a spot is the metal between the rough spot and the finished face, square
 * to the face; for a bore or boss it is per side, on the side with least. <em>Spare</em> is what
 * comes off, less the least cleaning cut of the face, less the uncertainty of the spot, which is
 * taken as a bound. A casting cleans up when no spare is below nothing. A flat face is known at its
 * spots alone: measure near its corners. A bore that leans is reckoned round at each of its spots.
 *
 * <p>The least spare is good to 1e-6 mm and does not depend on the order of faces or spots; where
 * turns leave it free, the rest is shared as well as steps of this size find. Sizes are up to 100
 * 000 mm, turns up to 10 degrees. Anything else is refused with a {@link
 * org.fettlebench.castings.CastingException} that names face, value and remedy. Everything is
 * immutable and may be used from any thread. No null is taken or returned.
 */
@Export
@Version("1.2.0")
package org.fettlebench.castings;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
