package org.fettlebench.fits;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.fettlebench.fits.SeatAnswer.Governing;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/**
 * Says what an answer means at the bench, the same on the page, on the card and on the command
 * line. Every sentence shows the asked unit first; an empty one means that there is nothing to say.
 */
public final class SeatWords {
  /** How many directions {@link #directions} names: every 45 degrees from x on. */
  public static final int DIRECTIONS = Eighths.COUNT;

  private SeatWords() {}

  /**
   * Returns the answer in lines: the verdict first, then its figures and what they rest on.
   *
   * @param chance that a hole so placed will do, from 0 to 1; empty when not known
   * @param rose how far the hole may be out in {@link #DIRECTIONS} directions; may be empty
   */
  public static List<String> lines(
      SeatAnswer answer, OptionalDouble chance, List<Reach> rose, LengthUnit unit) {
    SeatQuestion question = answer.question();
    List<String> lines = new ArrayList<>();
    lines.add(
        question.seat().name() + ": " + question.head().title() + " " + answer.verdict().word());
    lines.add(allowance(answer, unit));
    lines.add(expected(answer, unit));
    chance.ifPresent(each -> lines.add("Chance of success " + percent(each) + "."));
    lines.add(governs(answer, unit));
    lines.add(
        "Hole "
            + size(question.holeDiameterMm(), unit)
            + " at "
            + place(question.seat().intended(), unit)
            + " (x to the right, y away from you); best centre "
            + place(answer.best(), unit)
            + ", allowance there "
            + both(answer.allowanceAtBestMm(), unit)
            + ".");
    if (!rose.isEmpty()) {
      lines.add("The hole may be out: " + directions(rose, unit) + ".");
    }
    lines.add(head(question.head(), unit));
    answer.cautions().forEach(caution -> lines.add(upper(caution) + "."));
    return lines;
  }

  /** Returns a cure as a sentence, with what comes of it. */
  public static String cure(SeatCure cure, LengthUnit unit) {
    return upper(LengthFormat.turned(cure.sentence(), unit)) + ".";
  }

  /** Returns what comes of a change, such as {@code then clears, 0.63 mm}. */
  public static String then(SeatAnswer after, LengthUnit unit) {
    return "then "
        + after.verdict().word()
        + ", "
        + LengthFormat.allowance(Length.ofMillimetres(after.allowanceAtIntendedMm()), unit);
  }

  /** Returns how far the hole may be out. */
  public static String allowance(SeatAnswer answer, LengthUnit unit) {
    double allowance = answer.allowanceAtIntendedMm();
    return allowance >= 0
        ? "The hole may be out " + both(allowance, unit) + "."
        : "Lacks " + both(-allowance, unit) + " even with the hole just right.";
  }

  /** Returns how far the hole may be out, against what is to be expected, in one sentence. */
  public static String room(SeatAnswer answer, LengthUnit unit) {
    double allowance = answer.allowanceAtIntendedMm();
    return (allowance >= 0
            ? "The hole may be out " + both(allowance, unit)
            : "Even with the hole just right it lacks " + both(-allowance, unit))
        + "; the method is expected within "
        + both(answer.question().expectedErrorMm(), unit)
        + ".";
  }

  /** Returns what is to be expected, with where that comes from. */
  public static String expected(SeatAnswer answer, LengthUnit unit) {
    return "Expected within "
        + both(answer.question().expectedErrorMm(), unit)
        + " (radius): "
        + answer.question().errorMeans()
        + ".";
  }

  /** Returns what governs, with its figures. */
  public static String governs(SeatAnswer answer, LengthUnit unit) {
    Governing governing = answer.governing();
    return upper(governing.name())
        + " governs: "
        + LengthFormat.show(Length.ofMillimetres(governing.distanceMm()), unit)
        + " away, "
        + LengthFormat.show(Length.ofMillimetres(governing.neededMm()), unit)
        + " needed"
        + switch (governing.kind()) {
          case EDGE, WALL, NEIGHBOUR -> " by the " + governing.meets();
          case METAL -> " for metal round the hole";
          case METAL_BELOW -> " for metal round the hole on the far face";
          case CAVITY -> " for metal over the hollow";
        }
        + ".";
  }

  /** Returns how far the hole may be out each way, as seen from above, in one unit for brevity. */
  public static String directions(List<Reach> rose, LengthUnit unit) {
    List<String> ways = new ArrayList<>();
    for (Reach reach : rose) {
      ways.add(Eighths.words(reach.bearingDegrees()) + " " + reach(reach.allowanceMm(), unit));
    }
    return String.join(", ", ways);
  }

  private static String reach(OptionalDouble allowanceMm, LengthUnit unit) {
    if (allowanceMm.isEmpty()) {
      return "nowhere";
    }
    double mm = allowanceMm.getAsDouble();
    String figure = LengthFormat.allowance(Length.ofMillimetres(Math.abs(mm)), unit);
    return mm < 0 ? "only after " + figure : figure;
  }

  private static String head(SeatedHead head, LengthUnit unit) {
    OptionalDouble flats = head.acrossFlatsMm();
    return "Head: "
        + head.title()
        + (flats.isPresent() ? ", across flats " + size(flats.getAsDouble(), unit) : "")
        + ", sweeps "
        + size(head.sweepDiameterMm(), unit)
        + (head.caveat().isEmpty() ? "" : ", " + head.caveat())
        + ".";
  }

  /** Returns a place by its co-ordinates. */
  public static String place(Point at, LengthUnit unit) {
    return "x "
        + LengthFormat.show(Length.ofMillimetres(at.xMm()), unit)
        + ", y "
        + LengthFormat.show(Length.ofMillimetres(at.yMm()), unit);
  }

  /** Returns an allowance in both units. */
  public static String both(double millimetres, LengthUnit unit) {
    return LengthFormat.allowanceBoth(Length.ofMillimetres(millimetres), unit);
  }

  private static String size(double millimetres, LengthUnit unit) {
    return LengthFormat.showBoth(Length.ofMillimetres(millimetres), unit);
  }

  /** Returns words with a capital, to begin a sentence. */
  public static String upper(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /**
   * Returns a chance as a person says it, never more sure than it is: 0.9997 is not 100 %.
   *
   * @param chance from 0 to 1
   */
  public static String percent(double chance) {
    double percent = 100 * chance;
    if (percent >= 99.95) {
      return "above 99.9 %";
    }
    if (percent < 0.05) {
      return "below 0.1 %";
    }
    return String.format(
        Locale.ROOT, percent >= 99 || percent < 1 ? "%.1f %%" : "%.0f %%", percent);
  }
}
