package org.fettlebench.command.internal.hole;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.fettlebench.tables.Source;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.HoleChooser;
import org.fettlebench.tooling.HoleChooser.PercentWanted;
import org.fettlebench.tooling.TappingChoice;

/**
 * The thread that is wanted in the hole.
 *
 * @param material tapped; empty when not said
 * @param said per cent that the person said
 * @param usual per cent that is usual
 */
record PlanWanted(String material, Optional<Double> said, PercentWanted usual) {
  /** Returns the per cent of thread wanted. */
  double percent() {
    return said.orElse(usual.percent());
  }

  /** Returns the source of the per cent; empty when the person said it. */
  Optional<Source> source() {
    return said.isPresent() ? Optional.empty() : Optional.of(usual.source());
  }

  /** Ranks drills by it. */
  List<TappingChoice> rank(HoleChooser chooser, ScrewThread thread, Collection<DrillSize> from) {
    return said.isPresent()
        ? chooser.tapping(thread, said.get(), from)
        : chooser.tapping(thread, usual, from);
  }
}
