package org.fettlebench.threads;

import java.util.List;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The limits that the classes of the standards set to all diameters of a thread.
 *
 * <p>Classes are written so, capitals as the standard has them:
 *
 * <ul>
 *   <li>ISO 965-1: grade and position of the effective diameter, then of the crest if it differs:
 *       {@code 6g}, {@code 4g6g}, {@code 5H6H}; grades 3 to 9 and positions e f g h for screws, 4
 *       to 8 and G H for nuts;
 *   <li>ASME B1.1: {@code 1A}, {@code 2A}, {@code 3A}, {@code 1B}, {@code 2B}, {@code 3B};
 *   <li>BS 84: {@code close}, {@code medium}, {@code free} for screws, {@code medium}, {@code
 *       normal} for nuts;
 *   <li>BS 93: {@code close}, {@code normal}; nuts have one class, which goes with both;
 *   <li>ISO 228-1: {@code A}, {@code B}; nuts have one class, which goes with both.
 * </ul>
 *
 * <p>A nut's class and a screw's class may be written together: {@code 6H/6g}, {@code 2B/2A}.
 */
@ProviderType
public interface ThreadClasses {
  /**
   * Returns the classes in usual use for a thread, the most usual fit first; empty where the series
   * names no standard for its limits.
   */
  List<String> classes(ScrewThread thread);

  /**
   * Returns the limits of a class for the standard's usual length of engagement: of the nut, the
   * screw or both, as the class says, the screw first.
   *
   * @throws MeasureException if the thread has no such class, naming those it has
   */
  List<LimitsOfThread> limits(ScrewThread thread, String threadClass);

  /**
   * Returns the limits of a class for another length of engagement. Only ASME B1.1 and BS 84 let it
   * into their tolerances.
   *
   * @param engagement above 0
   * @throws MeasureException if the thread has no such class, or its standard knows no such rule
   */
  List<LimitsOfThread> limits(ScrewThread thread, String threadClass, Length engagement);
}
