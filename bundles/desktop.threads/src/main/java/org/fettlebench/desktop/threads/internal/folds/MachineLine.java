package org.fettlebench.desktop.threads.internal.folds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tooling.speed.SpindleRange;

/** Reads a machine's speeds as they are typed: {@code 60 to 2500}, or {@code 350 600 1200}. */
final class MachineLine {
  private static final Pattern RANGE =
      Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(?:to|-|\u2013)\\s*(\\d+(?:\\.\\d+)?)");

  private static final Pattern STEPS =
      Pattern.compile("\\d+(?:\\.\\d+)?(?:[\\s,;]+\\d+(?:\\.\\d+)?)*");

  private MachineLine() {}

  /**
   * Returns the speeds; nothing for an empty line.
   *
   * @throws MeasureException if it is neither a range nor a list, with an example
   */
  static Optional<SpindleRange> read(String typed) {
    String plain = typed.replaceAll("(?i)\\s*(rpm|rev/min|r/min)\\s*", " ").strip();
    if (plain.isEmpty()) {
      return Optional.empty();
    }
    Matcher range = RANGE.matcher(plain);
    if (range.matches()) {
      return Optional.of(
          SpindleRange.between(
              Double.parseDouble(range.group(1)), Double.parseDouble(range.group(2))));
    }
    if (STEPS.matcher(plain).matches()) {
      List<Double> steps = new ArrayList<>();
      for (String step : plain.split("[\\s,;]+")) {
        steps.add(Double.parseDouble(step));
      }
      return Optional.of(SpindleRange.steps(steps));
    }
    throw new MeasureException(
        "\u201c"
            + typed.strip()
            + "\u201d tells no speeds of a machine; type 60 to 2500, or its steps 350 600 1200");
  }
}
