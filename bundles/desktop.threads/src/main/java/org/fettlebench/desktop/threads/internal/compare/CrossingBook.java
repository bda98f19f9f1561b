package org.fettlebench.desktop.threads.internal.compare;

import java.util.List;
import java.util.Optional;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.Threads;
import org.fettlebench.threads.identify.CrossPair;
import org.fettlebench.threads.identify.CrossingRule;
import org.fettlebench.threads.identify.ThreadIdentifier;

/** Answers which threads can be crossed and how they lie in each other. Knows no window. */
public final class CrossingBook {
  private final Threads threads;
  private final ThreadClasses classes;
  private final ThreadIdentifier identifier;

  /** Makes the book over the suite's services. */
  public CrossingBook(Threads threads, ThreadClasses classes, ThreadIdentifier identifier) {
    this.threads = threads;
    this.classes = classes;
    this.identifier = identifier;
  }

  Threads threads() {
    return threads;
  }

  /** Returns a screw in a nut, with the play that the usual classes leave. */
  public Crossing crossing(ScrewThread screw, ScrewThread nut) {
    return Crossing.of(
        screw, nut, limits(screw, ThreadSide.EXTERNAL), limits(nut, ThreadSide.INTERNAL));
  }

  private Optional<LimitsOfThread> limits(ScrewThread thread, ThreadSide side) {
    return classes.classes(thread).stream()
        .findFirst()
        .flatMap(
            usual ->
                classes.limits(thread, usual).stream().filter(l -> l.side() == side).findFirst());
  }

  /** Returns the other threads that could be taken for one, the nearest first. */
  public List<CrossPair> pairsOf(ScrewThread thread) {
    return identifier.pairsOf(thread, CrossingRule.USUAL).stream()
        .filter(pair -> pair.kind() != CrossPair.Kind.SAME)
        .toList();
  }
}
