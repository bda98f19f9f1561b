package org.fettlebench.tooling;

import java.util.List;
import org.fettlebench.tables.Source;

/**
 * A tapping drill as lists name it for a thread.
 *
 * @param drill the drill
 * @param percentOfThread per cent of thread it leaves, by the convention of the thread's form
 * @param sources the lists that name it; at least one
 */
public record ListedDrill(DrillSize drill, double percentOfThread, List<Source> sources) {
  /** Copies what could change. */
  public ListedDrill {
    sources = List.copyOf(sources);
  }
}
