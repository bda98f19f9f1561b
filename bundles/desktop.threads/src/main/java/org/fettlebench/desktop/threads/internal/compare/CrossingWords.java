package org.fettlebench.desktop.threads.internal.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.identify.CrossPair;

/** Says what happens when a screw goes into a nut of another thread. */
public final class CrossingWords {
  /** Shares of a pitch that have a word of their own, and how near counts as one. */
  private static final double[] SHARES = {
    1 / 10.0, 1 / 8.0, 1 / 6.0, 1 / 5.0, 1 / 4.0, 1 / 3.0, 1 / 2.0, 2 / 3.0, 3 / 4.0, 1
  };

  private static final String[] WORDS = {
    "a tenth of a pitch",
    "an eighth of a pitch",
    "a sixth of a pitch",
    "a fifth of a pitch",
    "a quarter of a pitch",
    "a third of a pitch",
    "half a pitch",
    "two thirds of a pitch",
    "three quarters of a pitch",
    "a whole pitch"
  };

  private static final double NEAR = 0.06;

  private CrossingWords() {}

  /** Returns a share of a pitch in words, or as a figure where no word is near. */
  public static String share(double pitches) {
    for (int i = 0; i < SHARES.length; i++) {
      if (Math.abs(pitches - SHARES[i]) <= NEAR * SHARES[i]) {
        return WORDS[i];
      }
    }
    return Figures.show(pitches, 2) + (pitches < 1 ? " of a pitch" : " pitches");
  }

  /** Returns in few words what happens to a pair, for a column. */
  public static String inShort(CrossPair pair) {
    return switch (pair.kind()) {
      case SAME -> "is the same";
      case GOES_ON -> "holds badly";
      case BINDS -> "binds";
    };
  }

  /** Returns the answer in one sentence. */
  public static String answer(Crossing crossing, int threads) {
    String pair = crossing.screw().designation() + " in " + crossing.nut().designation() + ": ";
    if (crossing.same()) {
      return pair + "the same thread under two names";
    }
    if (crossing.cannotEnter()) {
      return pair + "too large to go in";
    }
    if (crossing.slipsThrough()) {
      return pair + "slips through and holds nothing";
    }
    if (crossing.threadsToHalf().isEmpty()) {
      return pair + "one pitch, so it goes on all the way";
    }
    return pair
        + "after "
        + Figures.count(threads, "thread", "threads")
        + " the crests are "
        + share(crossing.apartPitches(threads))
        + " apart";
  }

  /** Returns what else there is to say, sentence by sentence. */
  public static List<String> because(Crossing crossing, int threads, LengthUnit unit) {
    List<String> said = new ArrayList<>();
    larger(crossing, unit, said);
    double drift = crossing.driftPerThreadMm();
    if (crossing.threadsToHalf().isPresent()) {
      said.add(
          "The nut's pitch is "
              + fine(Math.abs(drift), unit)
              + (drift > 0 ? " coarser: " : " finer: ")
              + fine(crossing.apartMm(threads), unit)
              + " over "
              + Figures.count(threads, "thread", "threads")
              + ", half a pitch after "
              + Figures.show(crossing.threadsToHalf().getAsDouble(), 1)
              + ".");
    }
    binds(crossing, said);
    if (crossing.screw().form().includedAngleDegrees()
        != crossing.nut().form().includedAngleDegrees()) {
      said.add(
          "Flanks of "
              + angle(crossing.screw().form().includedAngleDegrees())
              + " on flanks of "
              + angle(crossing.nut().form().includedAngleDegrees())
              + " bear on an edge only.");
    }
    return said;
  }

  private static void larger(Crossing crossing, LengthUnit unit, List<String> said) {
    double larger = crossing.largerMm();
    if (Math.abs(larger) >= 0.001) {
      said.add(
          "The screw is "
              + fine(Math.abs(larger), unit)
              + (larger > 0 ? " larger" : " smaller")
              + " over the crests.");
    }
  }

  private static void binds(Crossing crossing, List<String> said) {
    OptionalDouble after = crossing.bindsAfter();
    boolean meets = !crossing.slipsThrough() && !crossing.cannotEnter();
    if (after.isPresent() && meets) {
      said.add(
          "The loosest that the usual classes allow binds after "
              + Figures.show(after.getAsDouble(), 1)
              + " threads.");
    } else if (crossing.loosest().isEmpty() && meets && !crossing.same()) {
      said.add("No play is known from limits: taken at basic sizes.");
    }
  }

  private static String angle(double degrees) {
    return Figures.show(degrees, degrees == Math.rint(degrees) ? 0 : 1) + "\u00b0";
  }

  /** Returns a small length to a micron or a tenth of a thou. */
  static String fine(double millimetres, LengthUnit unit) {
    int decimals = unit == LengthUnit.INCH ? 4 : 3;
    return LengthFormat.show(Length.ofMillimetres(millimetres), unit, decimals);
  }
}
