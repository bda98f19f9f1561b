package org.fettlebench.threads.internal.limits;

import java.util.List;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;

/**
 * A tolerance or deviation with where it comes from.
 *
 * @param mm not negative
 * @param source of it
 * @param notes what a person must know of it
 */
record Tolerance(double mm, Source source, List<String> notes) {
  Tolerance(double mm, Source source) {
    this(mm, source, List.of());
  }

  /**
   * Returns the source of the one of two that is less to be trusted, this one if they are equal.
   */
  Source weaker(Tolerance other) {
    return rank(other.source()) >= rank(source) ? other.source() : source;
  }

  private static int rank(Source source) {
    return source.standing() == Standing.FROM_MEMORY
        ? 2
        : source.standing() == Standing.RULE ? 1 : 0;
  }
}
