package org.fettlebench.desktop.castings.internal;

import java.util.Optional;
import org.fettlebench.castings.CastingException;
import org.fettlebench.castings.Castings;

/** Answers a sketch; knows no window and may be asked on any thread. */
final class CastingBook {
  private final Castings castings;

  CastingBook(Castings castings) {
    this.castings = castings;
  }

  Reply ask(Sketch sketch) {
    Assembly made = new Assembly(sketch);
    if (made.casting().isEmpty()) {
      return new Reply(Optional.empty(), made.rows(), made.next(), made.isWrong());
    }
    try {
      return new Reply(
          Optional.of(castings.place(made.casting().get())),
          made.rows(),
          made.next(),
          made.isWrong());
    } catch (CastingException refused) {
      String said = made.next().isEmpty() ? refused.getMessage() + "." : made.next();
      return new Reply(
          Optional.empty(), made.rows(), said, made.next().isEmpty() || made.isWrong());
    }
  }
}
