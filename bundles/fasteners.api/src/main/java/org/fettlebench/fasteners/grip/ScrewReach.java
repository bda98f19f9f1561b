package org.fettlebench.fasteners.grip;

import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;

/**
 * A screw in its place.
 *
 * @param length under the head
 * @param passed thickness that it passes through before the thread it screws into
 * @param reach length less what is passed; 0 or less when it does not get there
 * @param engaged thread engaged: the reach, at most the full thread; 0 or more
 * @param beyond reach less full thread: what stands beyond nut or hole, or bottoms in a blind one;
 *     negative when full thread is left over
 * @param engagedDiameters thread engaged in diameters of the screw
 * @param verdict whether that will do
 */
public record ScrewReach(
    Length length,
    Length passed,
    Length reach,
    Length engaged,
    Length beyond,
    double engagedDiameters,
    Verdict verdict) {

  /** Thread engaged that is usual at least, in diameters: common practice, no source. */
  public static final double USUAL_DIAMETERS = 1;

  /**
   * Returns how far a screw reaches.
   *
   * @param length under the head, above 0
   * @param passed thickness passed, 0 or more
   * @throws MeasureException if a length is out of range
   */
  public static ScrewReach of(ScrewThread thread, Length length, Length passed, Into into) {
    if (!length.isPositive()) {
      throw new MeasureException("length of the screw " + length + " is not above 0 mm");
    }
    requirePassed(passed);
    Length reach = length.minus(passed);
    Length most = reach.compareTo(into.fullThread()) < 0 ? reach : into.fullThread();
    Length engaged = most.isPositive() ? most : Length.ZERO;
    Length beyond = reach.minus(into.fullThread());
    double diameters = engaged.millimetres() / thread.major().millimetres();
    Verdict verdict =
        into.kind() == Into.Kind.NUT
            ? inNut(reach, beyond)
            : inHole(thread, reach, beyond, diameters, into.kind());
    return new ScrewReach(length, passed, reach, engaged, beyond, diameters, verdict);
  }

  static void requirePassed(Length passed) {
    if (passed.nanometres() < 0) {
      throw new MeasureException("thickness passed " + passed + " is below 0 mm");
    }
  }

  private static Verdict inNut(Length reach, Length beyond) {
    if (!reach.isPositive()) {
      return Verdict.DOES_NOT_HOLD;
    }
    return beyond.nanometres() < 0 ? Verdict.SHALLOW : Verdict.GOOD;
  }

  private static Verdict inHole(
      ScrewThread thread, Length reach, Length beyond, double diameters, Into.Kind kind) {
    if (reach.compareTo(thread.pitch()) < 0) {
      return Verdict.DOES_NOT_HOLD;
    }
    if (kind == Into.Kind.BLIND && beyond.isPositive()) {
      return Verdict.BOTTOMS;
    }
    return diameters < USUAL_DIAMETERS ? Verdict.SHALLOW : Verdict.GOOD;
  }

  /** Whether a screw's length will do. */
  public enum Verdict {
    /** It reaches far enough and not too far. */
    GOOD("good"),
    /** It holds, but by less than one diameter, or does not fill its nut. */
    SHALLOW("shallow"),
    /** It does not reach the thread, or by less than one pitch. */
    DOES_NOT_HOLD("does not hold"),
    /** It meets the end of the full thread in a blind hole before its head is down. */
    BOTTOMS("bottoms");

    private final String word;

    Verdict(String word) {
      this.word = word;
    }

    /** Returns the word shown to people. */
    public String word() {
      return word;
    }
  }
}
