package org.fettlebench.desktop.threads.internal;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fettlebench.club.Goods;
import org.fettlebench.club.StockLine;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;

/** The drills that the club holds, each with where it is: in, out or worn. */
final class HeldDrills {
  private final Map<DrillSize, StockLine> lines = new TreeMap<>();

  private HeldDrills() {}

  static HeldDrills of(List<StockLine> stock, Drills drills) {
    HeldDrills held = new HeldDrills();
    stock.stream()
        .filter(line -> line.goods().kind() == Goods.Kind.DRILL && line.quantity() > 0)
        .sorted(Comparator.comparingInt(Whereabouts::rank))
        .forEach(
            line ->
                line.goods()
                    .diameter()
                    .ifPresent(d -> held.lines.putIfAbsent(drills.ofDiameter(d), line)));
    return held;
  }

  Collection<DrillSize> sizes() {
    return lines.keySet();
  }

  boolean has(DrillSize drill) {
    return lines.containsKey(drill);
  }

  /** Returns where a drill is; empty when the club holds none. */
  Optional<String> where(DrillSize drill) {
    return Optional.ofNullable(lines.get(drill)).map(Whereabouts::words);
  }

  /** Returns whether a drill is in its place and fit for use. */
  boolean ready(DrillSize drill) {
    return Optional.ofNullable(lines.get(drill)).filter(Whereabouts::ready).isPresent();
  }
}
