package org.fettlebench.paper;

import java.util.List;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.tooling.DrillSize;

/**
 * A chart of threads for the workshop wall.
 *
 * @param series ids of the thread series, in the order wanted; at least one
 * @param material tapped, by which the per cent of thread is chosen; may be empty
 * @param drills held, from which tapping and clearance drills are chosen; may be empty
 * @param holder whose drills they are, such as the club's name; may be empty
 * @param paper the sheet
 * @param first unit shown first
 */
public record WallChart(
    List<String> series,
    String material,
    List<DrillSize> drills,
    String holder,
    WallPaper paper,
    LengthUnit first) {
  /**
   * Copies what could change.
   *
   * @throws IllegalArgumentException if no series is named
   */
  public WallChart {
    series = List.copyOf(series);
    drills = List.copyOf(drills);
    if (series.isEmpty()) {
      throw new IllegalArgumentException("a wall chart needs at least one thread series");
    }
  }
}
