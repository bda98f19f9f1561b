package org.fettlebench.benchmarks;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.TappingChoice;
import org.fettlebench.tooling.internal.DrillRegistry;
import org.fettlebench.tooling.internal.HoleChoice;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Choosing a hole out of a thousand held drills. */
@State(Scope.Benchmark)
public class HolesBenchmark {
  @Param({"2 BA", "M6", "1/4-20 UNC"})
  String designation;

  private HoleChoice holes;
  private ScrewThread thread;
  private List<DrillSize> held;

  /** Reads the shipped tables; makes drills from 0.5 mm up by 0.02 mm, beside those of the sets. */
  @Setup
  public void read() {
    Tables tables = Shipped.tables();
    DrillRegistry drills = Shipped.drills(tables);
    holes = Shipped.holes(tables);
    thread = Shipped.threads(tables).find(designation).orElseThrow();
    held = new ArrayList<>(drills.catalogue());
    for (int step = 0; held.size() < 1000; step++) {
      held.add(drills.ofDiameter(Length.ofNanometres(500_001 + 20_000L * step)));
    }
    held = List.copyOf(held.subList(0, 1000));
  }

  /** Ranks tapping drills for 75 per cent. */
  @Benchmark
  public List<TappingChoice> tapping() {
    return holes.tapping(thread, 75, held);
  }

  /** Chooses clearance drills: close, medium and free. */
  @Benchmark
  public List<ClearanceChoice> clearance() {
    return holes.clearance(thread, held);
  }
}
