package org.fettlebench.command.internal.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.measure.Length;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;

/** The drills that are in their place and fit for use, by size. */
public final class HeldDrills {
  private final SortedMap<Length, List<StockLine>> lines = new TreeMap<>();
  private final Drills drills;
  private boolean entered;

  /** Looks through the stock once. */
  public HeldDrills(Stock stock, Drills drills) {
    this.drills = drills;
    for (StockLine line : stock.lines()) {
      entered |= line.goods().kind() == Goods.Kind.DRILL;
      if (line.goods().kind() == Goods.Kind.DRILL
          && line.condition() == StockLine.Condition.GOOD
          && line.present() > 0) {
        line.goods()
            .diameter()
            .ifPresent(d -> lines.computeIfAbsent(d, key -> new ArrayList<>()).add(line));
      }
    }
  }

  /** Returns whether the stock has any drill, wherever it is and however worn. */
  public boolean entered() {
    return entered;
  }

  /** Returns the sizes, smallest first. */
  public List<DrillSize> sizes() {
    return lines.keySet().stream().map(drills::ofDiameter).toList();
  }

  /** Returns the places where a size is, in the order of the stock; empty when none is held. */
  public List<String> places(DrillSize size) {
    return lines.getOrDefault(size.diameter(), List.of()).stream()
        .map(StockLine::place)
        .distinct()
        .toList();
  }
}
