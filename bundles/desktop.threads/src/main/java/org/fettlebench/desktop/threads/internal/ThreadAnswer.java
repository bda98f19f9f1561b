package org.fettlebench.desktop.threads.internal;

import java.util.List;
import java.util.Optional;
import org.fettlebench.club.StockLine;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.threads.DiameterLimits;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.BlindHole;
import org.fettlebench.tooling.ClearanceFit;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.HoleChooser.BlindHoleRequest;
import org.fettlebench.tooling.ListedDrill;
import org.fettlebench.tooling.TappingChoice;

/**
 * What there is to say of a thread and its holes.
 *
 * @param question what was asked
 * @param wanted per cent of thread
 * @param habit where that comes from, unless it was asked for
 * @param limits of the nut's minor diameter, where a standard gives them
 * @param choices tapping drills to choose from, best first
 * @param rule drills either side of the ideal, smallest first, held or not
 * @param chosen the drill looked at; empty when there is none to choose
 * @param listed drills that lists name, held or not
 * @param clearance drills to pass, closest fit first
 * @param blind the blind hole with what was asked of it
 * @param taps held for the thread
 */
record ThreadAnswer(
    ThreadQuestion question,
    double wanted,
    Optional<Source> habit,
    Optional<DiameterLimits> limits,
    List<Tapping> choices,
    List<Tapping> rule,
    Optional<Tapping> chosen,
    List<ListedDrill> listed,
    List<Clearance> clearance,
    Optional<Blind> blind,
    List<StockLine> taps) {

  /**
   * A drill to tap after.
   *
   * @param where it is; empty when the club holds none
   * @param ready whether it is in its place and fit for use
   * @param beyond by how much it is above the most (or, negative, below the least) that the class
   *     allows the hole
   */
  record Tapping(
      TappingChoice choice, Optional<String> where, boolean ready, Optional<Length> beyond) {
    DrillSize drill() {
      return choice.drill();
    }

    boolean held() {
      return where.isPresent();
    }
  }

  /**
   * A drill to pass.
   *
   * @param listed the hole that the list gives
   * @param clearance drill less major diameter
   * @param where it is; empty when the club holds none that will do
   */
  record Clearance(
      ClearanceFit fit,
      DrillSize drill,
      Length listed,
      Length clearance,
      Optional<String> where,
      Source source) {}

  /** A blind hole and what was asked of it. */
  record Blind(BlindHoleRequest asked, BlindHole hole) {}

  ScrewThread thread() {
    return question.thread();
  }
}
