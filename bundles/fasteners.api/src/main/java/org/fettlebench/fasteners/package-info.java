/**
 * Heads, nuts and washers: how much room does a fastener take on the face it bears on?
 *
 * <p>A {@link org.fettlebench.fasteners.HeadStyle} is a shape with a name in files ({@code
 * hexagon}); a {@link org.fettlebench.fasteners.Head} is that style on one thread, with the largest
 * sizes its table allows, since room must be found for the largest. Lengths are exact to 1 nm;
 * figures carry their source, and the note says what a person should know before trusting them.
 * What no table lists is absent, never guessed: Model Engineer threads, for one, have no head list
 * of their own.
 *
 * <p>{@link org.fettlebench.fasteners.Heads} is found as a service. It merges all tables of kind
 * {@code heads} that started bundles carry; a club adds its own styles or sizes with one such file.
 * Header keys of the kind beyond the usual ones:
 *
 * <ul>
 *   <li>{@code style}, {@code style-title}: id and words of the style
 *   <li>{@code part}: {@code head}, {@code nut} or {@code washer}
 *   <li>{@code series}: ids of the thread series the rows serve, with spaces between
 *   <li>{@code note} (may be absent): for all rows
 * </ul>
 *
 * <p>Columns, each ending in {@code _mm} or {@code _in}: {@code major} (of the thread, by which a
 * row is found, within 0.005 mm, whatever the pitch), {@code across_flats} or {@code diameter},
 * {@code across_corners} (when blank: across flats / cos 30°, and the note says so), {@code
 * height}, {@code washer_face}; and {@code size} for people, {@code source}, {@code standing},
 * {@code note}. Of two tables with the same style and thread the suite's own stands. A table of
 * countersunk heads has the header {@code countersunk-degrees}: included angle of the cone.
 *
 * <p>{@link org.fettlebench.fasteners.HeadSinks} says what is to be cut for a head. Where tables of
 * kind {@code head-sinks} list the cut, its listed diameter and depth are given beside the head's
 * own. Their header: {@code style} and {@code series} as above, {@code with} ({@code washer}; may
 * be absent); columns {@code major}, {@code diameter} and {@code depth} (may be blank), each ending
 * in {@code _mm} or {@code _in}. A club's table goes before the suite's own.
 *
 * <p>Everything is immutable and may be used from any thread. No null is taken or returned.
 */
@Export
@Version("1.1.0")
package org.fettlebench.fasteners;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
