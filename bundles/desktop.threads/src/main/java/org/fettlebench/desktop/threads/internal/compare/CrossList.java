package org.fettlebench.desktop.threads.internal.compare;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Column;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.LongList;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.identify.CrossPair;

/** The threads that a person could take for one; choosing one lays it over. */
final class CrossList {
  private final Label heading;
  private final LongList<CrossPair> list;
  private boolean setting;

  CrossList(Composite parent, Desk desk, Consumer<ScrewThread> chosen) {
    heading = Layouts.label(parent, desk.look().heading(), "Easily taken for it");
    heading.setForeground(desk.look().ink());
    list =
        new LongList<>(parent, desk, "threads", "crosslist", columns(desk))
            .keyedBy(pair -> pair.second().designation())
            .whenEmpty("No thread of the series that are enabled comes near enough.")
            .onSelect(
                rows -> {
                  if (!setting) {
                    rows.stream().findFirst().ifPresent(pair -> chosen.accept(pair.second()));
                  }
                });
    Layouts.fill(list);
  }

  private static List<Column<CrossPair>> columns(Desk desk) {
    return List.of(
        Column.<CrossPair>words("Thread", 12, pair -> pair.second().designation()),
        Column.<CrossPair>lengths("Larger", desk, p -> Optional.of(p.diameterDifference()))
            .wide(12),
        Column.<CrossPair>figures("\u00bd pitch at", "", 1, CrossList::half).wide(11),
        Column.<CrossPair>words("Then", 11, CrossingWords::inShort).upTo(16));
  }

  private static OptionalDouble half(CrossPair pair) {
    return Crossing.of(pair.first(), pair.second()).threadsToHalf();
  }

  void show(List<CrossPair> pairs, ScrewThread laidOver, LengthUnit unit) {
    setting = true;
    heading.setText(
        pairs.isEmpty()
            ? "Nothing is easily taken for it"
            : "Easily taken for " + pairs.get(0).first().designation());
    list.items(pairs);
    list.select(laidOver.designation());
    setting = false;
  }
}
