package org.fettlebench.desktop.threads.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.threads.internal.ThreadAnswer.Tapping;
import org.fettlebench.desktop.widgets.Column;
import org.fettlebench.desktop.widgets.VerdictMark;

/** The columns of the list of tapping drills. */
final class TappingColumns {
  private TappingColumns() {}

  static List<Column<Tapping>> of(Desk desk) {
    return List.of(
        Column.<Tapping>words("Drill", 11, t -> String.join(" = ", t.drill().names()))
            .orderedBy(Comparator.comparing(Tapping::drill)),
        Column.<Tapping>lengths("Size", desk, t -> Optional.of(t.drill().diameter())).wide(10),
        Column.<Tapping>figures(
                "Thread", "%", 0, t -> OptionalDouble.of(t.choice().percentOfThread()))
            .wide(11),
        Column.<Tapping>figures("As drilled", "%", 0, t -> optional(t.choice().percentAsDrilled()))
            .wide(14),
        Column.<Tapping>words("Where", 25, t -> t.where().orElse("not held"))
            .marked(t -> Optional.of(mark(t))),
        Column.<Tapping>words("Mind", 20, t -> TappingWords.mind(t, desk.unit())).upTo(30));
  }

  private static VerdictMark mark(Tapping tapping) {
    return tapping.ready()
        ? VerdictMark.TICK
        : tapping.held() ? VerdictMark.HALF : VerdictMark.OPEN;
  }

  private static OptionalDouble optional(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
