package org.fettlebench.kits;

import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.StationOutline.Station;
import org.fettlebench.measure.Point;

/**
 * All that a seat file says, so that it can be written again as it was meant.
 *
 * @param question the seat with its head and hole
 * @param stations the measured widths of which the outline was made; empty when it was given by its
 *     corners
 * @param head what the head is called
 * @param hole how the hole is placed, and what came of it
 */
public record SeatFile(SeatQuestion question, List<Station> stations, Head head, Hole hole) {
  /** Copies what could change. */
  public SeatFile {
    stations = List.copyOf(stations);
  }

  /**
   * A head by its name.
   *
   * @param thread designation; empty when the head was measured
   * @param style id of its style; empty when the head was measured
   */
  public record Head(String thread, String style) {
    /** A head that was measured; its sizes stand in the question. */
    public static final Head MEASURED = new Head("", "");

    /** Returns whether it is of the tables. */
    public boolean listed() {
      return !thread.isEmpty();
    }
  }

  /**
   * How the hole is placed.
   *
   * @param method id of the way of placing it
   * @param confidence chance asked that it lands within its expected error, between 0 and 1
   * @param drilled the hole that is there already, where it was measured
   */
  public record Hole(String method, double confidence, Optional<Drilled> drilled) {}

  /**
   * A hole as it was measured.
   *
   * @param centre its centre
   * @param diameterMm its diameter
   * @param withinMm radius that holds its true centre at 95 per cent
   */
  public record Drilled(Point centre, double diameterMm, double withinMm) {}
}
