package org.fettlebench.threads.internal.limits;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Source;
import org.fettlebench.threads.DiameterRange;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;

/** How one standard sets limits to a thread. */
interface LimitRule {
  /** Returns the name of the standard, such as {@code ISO 965-1}. */
  String standard();

  /** Returns the classes in usual use, the most usual first. */
  List<String> classes(ScrewThread thread);

  /**
   * Returns the limits of one class, not of two joined by a stroke.
   *
   * @param engagement where it is not the standard's usual one
   * @throws MeasureException if there is no such class
   */
  List<LimitsOfThread> limits(ScrewThread thread, String threadClass, Optional<Length> engagement);

  /** Refuses a class that the standard does not have for the thread. */
  default MeasureException unknown(ScrewThread thread, String threadClass, String remedy) {
    return new MeasureException(
        "%s has no class '%s' for %s: %s"
            .formatted(standard(), threadClass, thread.designation(), remedy));
  }

  /** Refuses a length of engagement where the standard has no rule for it. */
  default void withoutEngagement(Optional<Length> engagement) {
    if (engagement.isPresent()) {
      throw new MeasureException(
          standard()
              + " gives its tolerances without a length of engagement: leave "
              + engagement.get()
              + " out");
    }
  }

  /** Returns a range that is open above. */
  static DiameterRange from(Length least, Source source) {
    return new DiameterRange(Optional.of(least), Optional.empty(), source);
  }

  /** Returns a range that is open below. */
  static DiameterRange upTo(Length most, Source source) {
    return new DiameterRange(Optional.empty(), Optional.of(most), source);
  }

  /** Returns a closed range. */
  static DiameterRange between(Length least, Length most, Source source) {
    return new DiameterRange(Optional.of(least), Optional.of(most), source);
  }
}
