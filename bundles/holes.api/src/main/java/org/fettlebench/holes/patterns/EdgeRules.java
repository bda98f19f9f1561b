package org.fettlebench.holes.patterns;

import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Rules of edge distance and pitch out of tables. Tables of kind {@code edge-distances} have the
 * columns {@code id}, {@code what}, {@code to} ({@code edge}, {@code end} or {@code next hole}) and
 * the factors {@code fastener_diameters}, {@code hole_diameters}, {@code thread_pitches} (blank for
 * 0), of which one must be above 0; {@code above_in} is the fastener above which the rule holds,
 * blank for any. Tables of kind {@code edge-distance-sizes} have {@code fastener} and {@code
 * least}, each in {@code _in} or {@code _mm}.
 */
@ProviderType
public interface EdgeRules {
  /** Returns the rules by factors. */
  List<EdgeRule> rules();

  /** Returns the least distances to an edge that a standard lists by size, in the table's order. */
  List<Listed> listed();

  /**
   * A listed distance.
   *
   * @param fastenerMm diameter of the fastener
   * @param leastMm centre to edge
   * @param source of the row
   */
  record Listed(double fastenerMm, double leastMm, org.fettlebench.tables.Source source) {}
}
