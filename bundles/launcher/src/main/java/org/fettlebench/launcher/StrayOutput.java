package org.fettlebench.launcher;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Takes what libraries and modules print without being asked, line by line, into the log, so that
 * the standard output carries nothing but answers.
 */
final class StrayOutput extends OutputStream {
  private static final Logger LOG = LoggerFactory.getLogger("printed");

  private final ByteArrayOutputStream line = new ByteArrayOutputStream();

  private StrayOutput() {}

  /** Puts itself in the place of the two standard streams. */
  static void divert() {
    System.setOut(new PrintStream(new StrayOutput(), true, StandardCharsets.UTF_8));
    System.setErr(new PrintStream(new StrayOutput(), true, StandardCharsets.UTF_8));
  }

  @Override
  public synchronized void write(int oneByte) {
    if (oneByte != '\n') {
      line.write(oneByte);
      return;
    }
    String text = line.toString(StandardCharsets.UTF_8).stripTrailing();
    line.reset();
    if (!text.isEmpty()) {
      LOG.info("{}", text);
    }
  }
}
