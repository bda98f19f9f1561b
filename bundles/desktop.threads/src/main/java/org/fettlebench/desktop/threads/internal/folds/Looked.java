package org.fettlebench.desktop.threads.internal.folds;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;

/**
 * What a person looks at.
 *
 * @param thread which
 * @param drill for its hole, if one is chosen
 * @param held drills of the club
 */
public record Looked(ScrewThread thread, Optional<DrillSize> drill, List<DrillSize> held) {
  /** Copies what could change. */
  public Looked {
    held = List.copyOf(held);
  }

  Length hole() {
    return drill.map(DrillSize::diameter).orElse(thread.minorInternal());
  }
}
