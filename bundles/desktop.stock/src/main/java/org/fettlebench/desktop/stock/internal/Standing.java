package org.fettlebench.desktop.stock.internal;

import java.util.Optional;
import org.fettlebench.desktop.widgets.VerdictMark;

/** What a person should know of a stock line at a glance, the most pressing first. */
enum Standing {
  /** Out on loan, and should be back. */
  OVERDUE("overdue", Optional.of(VerdictMark.STRUCK)),
  /** Nothing is there and nothing is out. */
  NONE("none left", Optional.of(VerdictMark.STRUCK)),
  /** Fewer are there than always should be. */
  LOW("low", Optional.of(VerdictMark.HALF)),
  /** Some are out on loan. */
  OUT("out", Optional.of(VerdictMark.HALF)),
  /** There, but not to be relied on. */
  WORN("worn", Optional.of(VerdictMark.HALF)),
  /** There and fit for use. */
  GOOD("good", Optional.empty());

  private final String word;
  private final Optional<VerdictMark> mark;

  Standing(String word, Optional<VerdictMark> mark) {
    this.word = word;
    this.mark = mark;
  }

  String word() {
    return word;
  }

  Optional<VerdictMark> mark() {
    return mark;
  }
}
