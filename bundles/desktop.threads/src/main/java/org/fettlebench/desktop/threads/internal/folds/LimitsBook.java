package org.fettlebench.desktop.threads.internal.folds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.ThreadSide;

/** The classes of a thread, screw and nut apart, and their limits. Knows no window. */
final class LimitsBook {
  /** Positions of ISO 965-1 beside those of the usual fits; the standard lets all be written. */
  private static final List<String> MORE_ISO =
      List.of("4g", "5g", "6e", "6f", "6h", "7g", "8e", "9g", "4H", "7G", "8H", "8G");

  private final ThreadClasses classes;

  LimitsBook(ThreadClasses classes) {
    this.classes = classes;
  }

  /** Returns the classes offered for one side, the most usual first, each limit once. */
  List<String> offered(ScrewThread thread, ThreadSide side) {
    List<String> names = new ArrayList<>();
    List<LimitsOfThread> seen = new ArrayList<>();
    Stream<String> usual =
        classes.classes(thread).stream().flatMap(fit -> Stream.of(fit.split("/")));
    Stream<String> more = isIso(thread) ? MORE_ISO.stream() : Stream.of();
    Stream.concat(usual, more)
        .distinct()
        .forEach(
            name ->
                limits(thread, name, side)
                    .filter(l -> !seen.contains(l))
                    .ifPresent(
                        l -> {
                          seen.add(l);
                          names.add(name);
                        }));
    return names;
  }

  private boolean isIso(ScrewThread thread) {
    return classes.classes(thread).contains("6H/6g");
  }

  /** Returns the limits of a class, or nothing where it is not for that side or does not exist. */
  private Optional<LimitsOfThread> limits(ScrewThread thread, String name, ThreadSide side) {
    try {
      return classes.limits(thread, name).stream().filter(l -> l.side() == side).findFirst();
    } catch (MeasureException none) {
      // A fit that the size does not have is not offered for it.
      return Optional.empty();
    }
  }

  /**
   * Returns the limits of a class that a person typed.
   *
   * @throws MeasureException if the thread has no such class for that side
   */
  LimitsOfThread asked(ScrewThread thread, String name, ThreadSide side) {
    return classes.limits(thread, name.strip()).stream()
        .filter(l -> l.side() == side)
        .findFirst()
        .orElseThrow(
            () ->
                new MeasureException(
                    "class "
                        + name.strip()
                        + " is none of a "
                        + side.word()
                        + "; choose "
                        + String.join(", ", offered(thread, side))));
  }
}
