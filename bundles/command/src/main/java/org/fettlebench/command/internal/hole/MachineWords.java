package org.fettlebench.command.internal.hole;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.command.CommandException;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tooling.speed.SpindleRange;

/** Reads a machine's speeds as they are typed: {@code 300-3000} or {@code 480,850,1400}. */
final class MachineWords {
  private static final Pattern RANGE =
      Pattern.compile("(\\d{1,6}(?:\\.\\d+)?)\\s*(?:-|\u2013|to|\\.\\.)\\s*(\\d{1,6}(?:\\.\\d+)?)");
  private static final Pattern STEP = Pattern.compile("\\d{1,6}(?:\\.\\d+)?");

  private MachineWords() {}

  /**
   * Reads the speeds.
   *
   * @throws CommandException if they are none
   */
  static SpindleRange read(String typed) {
    String plain = typed.strip().replaceFirst("(?i)\\s*(rpm|r/min|rev/min)$", "");
    try {
      Matcher range = RANGE.matcher(plain);
      return range.matches()
          ? SpindleRange.between(
              Double.parseDouble(range.group(1)), Double.parseDouble(range.group(2)))
          : SpindleRange.steps(steps(typed, plain));
    } catch (MeasureException refused) {
      throw new CommandException("--machine \"" + typed + "\": " + refused.getMessage(), refused);
    }
  }

  private static List<Double> steps(String typed, String plain) {
    List<String> words = Arrays.stream(plain.split("[,;/ ]+")).filter(w -> !w.isEmpty()).toList();
    if (words.isEmpty() || !words.stream().allMatch(word -> STEP.matcher(word).matches())) {
      throw new CommandException(
          "--machine \""
              + typed
              + "\" is no range of speeds; say the slowest and fastest like 300-3000, or the steps"
              + " of its pulleys like 480,850,1400,2400");
    }
    return words.stream().map(Double::valueOf).toList();
  }
}
