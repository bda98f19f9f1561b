package org.fettlebench.paper.internal;

import java.util.List;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.Verdict;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointReport;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/** What cards and reports say, in the trade's words. */
final class CardWords {
  /** Name of the rule whose findings are depths of drilling. */
  static final String BLIND_HOLE = "blind hole";

  private CardWords() {}

  static String what(Joint joint) {
    return joint.count()
        + " off "
        + joint.fastener().title()
        + (joint.part().isBlank() ? "" : "; " + joint.part());
  }

  /** Returns the verdict in a word; one that fails for another reason than its seat says so. */
  static String verdict(JointReport joint) {
    boolean seatFouls = joint.verdict().filter(v -> v == Verdict.FOULS).isPresent();
    return joint.fails() && !seatFouls
        ? "fails"
        : joint.verdict().map(Verdict::word).orElse("seat not measured");
  }

  static String cure(SeatCure cure) {
    return begun(cure.sentence());
  }

  static String substitute(JointReport.Substitute other, LengthUnit first) {
    return other.fastener().title()
        + ": "
        + other.change()
        + "; "
        + other.present()
        + " in "
        + other.place()
        + other
            .after()
            .map(
                seat ->
                    "; then "
                        + seat.verdict().word()
                        + ", "
                        + both(seat.allowanceAtIntendedMm(), first))
            .orElse("");
  }

  static String fetch(JointReport.Fetch fetch) {
    return fetch.what() + (fetch.figures().isBlank() ? "" : ", " + fetch.figures());
  }

  static String from(JointReport.Fetch fetch) {
    return fetch.role().words()
        + ": "
        + fetch.state().words()
        + (fetch.from().isBlank() ? "" : ", " + fetch.from());
  }

  /** Returns what to write down at the bench, fitting what the joint has. */
  static List<String> boxes(Joint joint) {
    return List.of(
        "Hole found at x",
        "Hole found at y",
        joint.tapped().isPresent() ? "Tapping drill used" : "Drill used",
        joint.tapped().isPresent() ? "Depth drilled" : "Diameter measured",
        "Done by, date");
  }

  static String begun(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static String both(double mm, LengthUnit first) {
    return LengthFormat.allowanceBoth(Length.ofMillimetres(mm), first);
  }
}
