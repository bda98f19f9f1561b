package org.fettlebench.desktop.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.kits.JointReport;

/**
 * Something that may be done instead of what the kit means: a cure or another fastener.
 *
 * @param sentence what to do
 * @param detail what else it changes, and where it is held; may be empty
 * @param after the seat then, where a seat was measured
 */
record Choice(String sentence, String detail, Optional<SeatAnswer> after) {

  /** Returns the cures of a joint, best first. */
  static List<Choice> cures(JointReport report) {
    return report.cures().stream()
        .map(cure -> new Choice(begun(deed(cure.sentence())), "", Optional.of(cure.after())))
        .toList();
  }

  /** Returns the other fasteners that stock holds, least change first. */
  static List<Choice> substitutes(JointReport report) {
    return report.substitutes().stream()
        .map(
            other ->
                new Choice(
                    other.fastener().title(),
                    begun(other.change()) + "; " + other.present() + " in " + other.place(),
                    other.after()))
        .toList();
  }

  /** Returns all of them, cures first. */
  static List<Choice> all(JointReport report) {
    List<Choice> all = new ArrayList<>(cures(report));
    all.addAll(substitutes(report));
    return List.copyOf(all);
  }

  /** The outcome is shown with its mark, so what the sentence says of it is left out. */
  private static String deed(String sentence) {
    int outcome = sentence.indexOf("; then it ");
    return outcome < 0 ? sentence : sentence.substring(0, outcome);
  }

  private static String begun(String sentence) {
    return sentence.isEmpty()
        ? sentence
        : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }
}
