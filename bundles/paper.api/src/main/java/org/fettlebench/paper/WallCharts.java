package org.fettlebench.paper;

import java.io.IOException;
import java.io.OutputStream;
import org.osgi.annotation.versioning.ProviderType;

/** Draws charts of threads and the drills for them as PDF, to be hung on a wall. */
@ProviderType
public interface WallCharts {
  /**
   * Writes a chart: of every thread of the series its sizes, the tapping drill held and the ideal
   * one with its per cent of thread, clearance drills and hexagon; sources, standings and cautions
   * in the foot of the sheet. It takes as many sheets as it needs.
   *
   * @param chart what to draw
   * @param pdf takes the bytes; is not closed
   * @return how many sheets were written, at least one
   * @throws IOException if the stream cannot take them
   * @throws IllegalArgumentException if there is no series of an id
   */
  int write(WallChart chart, OutputStream pdf) throws IOException;
}
