package org.fettlebench.desktop.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;

/** Going about on the page by real keys and clicks. */
class EveningTest extends PageTrial {
  @Test
  void anEveningAtTheBenchGoesByKeyboardAndMouse() throws IOException {
    run(
        robot -> {
          page.focus();
          robot.type("4.66 x 31.5 tpi");
          assertTrue(says("Measured: 4.66 x 31.5 tpi?"));
          robot.click(find(root, Button.class, "Identify 4.66").orElseThrow());
          assertTrue(says("Likely 2 BA"), "the measurements are taken over");
          robot.click(find(root, Button.class, "ompare in full").orElseThrow());
          assertTrue(says("2 BA in 3/16 x 32 ME: after 6 threads"));
          robot.click(find(root, Button.class, "Thread and hole").orElseThrow());
          robot.click(find(root, Text.class, "2 BA, M6").orElseThrow());
          page.focus();
          robot.type("M6");
          assertTrue(says("M6: drill"));
          assertEquals("hole", desk.remembered("threads", "face", ""));
        });
  }
}
