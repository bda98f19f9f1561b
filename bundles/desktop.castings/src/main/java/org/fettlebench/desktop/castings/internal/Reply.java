package org.fettlebench.desktop.castings.internal;

import java.util.List;
import java.util.Optional;
import org.fettlebench.castings.Placing;

/**
 * What can be said of a sketch.
 *
 * @param placing of all that is whole; may be there while something else is still missing
 * @param rows the row of each feature of the placing, in its order
 * @param next what is missing or wrong; empty when nothing is
 * @param wrong whether {@code next} tells of something wrong rather than missing
 */
record Reply(Optional<Placing> placing, List<Integer> rows, String next, boolean wrong) {
  static final Reply NOTHING = new Reply(Optional.empty(), List.of(), "", false);

  Reply {
    rows = List.copyOf(rows);
  }

  /** Returns the answer, when nothing is missing. */
  Optional<Placing> answer() {
    return next.isEmpty() ? placing : Optional.empty();
  }

  /** Returns what comes off a row; empty when it is not placed. */
  Optional<Placing.Coming> coming(int row) {
    int at = rows.indexOf(row);
    return at < 0 ? Optional.empty() : placing.map(each -> each.features().get(at));
  }
}
