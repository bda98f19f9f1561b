package org.fettlebench.desktop.threads.internal;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/**
 * Tells how long a typed letter takes, when asked to ({@code -Dkeys.measure=true}); it holds
 * nothing, since a machine may be busy with other things.
 */
class KeyLatencyTest extends PageTrial {
  private static final int ROUNDS = 20;

  @Test
  void tellsHowLongALetterTakes() throws IOException {
    Assumptions.assumeTrue(Boolean.getBoolean("keys.measure"), "only on request");
    run(
        robot -> {
          Text text = find(root, Text.class, "2 BA, M6").orElseThrow();
          String[] typed = {"M6", "M", "M8", "4 BA", "4 B", "1/4 BSF"};
          long[] taken = new long[ROUNDS * typed.length];
          long[] work = new long[taken.length];
          ThreadMXBean processor = ManagementFactory.getThreadMXBean();
          for (int i = 0; i < taken.length; i++) {
            long worked = processor.getCurrentThreadCpuTime();
            long begun = System.nanoTime();
            text.setText(typed[i % typed.length]);
            // Painted, not only worked out.
            root.update();
            taken[i] = System.nanoTime() - begun;
            work[i] = processor.getCurrentThreadCpuTime() - worked;
            desk.settle();
          }
          Arrays.sort(taken);
          Arrays.sort(work);
          System.out.printf(
              java.util.Locale.ROOT,
              "A letter: median %.1f ms, nine of ten within %.1f ms, longest %.1f ms;"
                  + " processor %.1f ms, %.1f ms%n",
              taken[taken.length / 2] / 1e6,
              taken[taken.length * 9 / 10] / 1e6,
              taken[taken.length - 1] / 1e6,
              work[work.length / 2] / 1e6,
              work[work.length * 9 / 10] / 1e6);
        });
  }
}
