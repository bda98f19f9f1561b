package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatAnswer.Governing;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.fits.Verdict;
import org.fettlebench.holes.chance.Chance;
import org.fettlebench.holes.chance.Chances;
import org.fettlebench.holes.chance.MethodChance;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Finding.Weight;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.JointRule;
import org.fettlebench.measure.Tolerances;

/** Says whether the head sits where the hole may land, and what governs. */
final class SeatRule implements JointRule {
  static final String NAME = "seat";

  private final Chances chances;

  SeatRule(Chances chances) {
    this.chances = chances;
  }

  @Override
  public String title() {
    return "does the head sit";
  }

  @Override
  public List<Finding> look(JointCase joint) {
    List<Finding> findings = new ArrayList<>();
    joint.seat().ifPresent(answer -> findings.add(verdict(answer, chance(joint, answer))));
    if (joint.joint().seat().isPresent() && joint.seat().isEmpty()) {
      findings.add(unanswered(joint));
    }
    if (joint.seat().isPresent()) {
      joint
          .head()
          .map(Head::note)
          .filter(note -> !note.isBlank())
          .ifPresent(note -> findings.add(Finding.of(Weight.NOTE, "head", sentence(note))));
    }
    return findings;
  }

  private static String sentence(String note) {
    return Character.toUpperCase(note.charAt(0))
        + note.substring(1)
        + (note.endsWith(".") ? "" : ".");
  }

  private Optional<Chance> chance(JointCase joint, SeatAnswer answer) {
    return joint
        .method()
        .map(method -> chances.each(answer, List.of(method)).get(0))
        .map(MethodChance::atIntended);
  }

  private static Finding verdict(SeatAnswer answer, Optional<Chance> chance) {
    Weight weight =
        switch (answer.verdict()) {
          case CLEARS -> Weight.NOTE;
          case TIGHT -> Weight.CAUTION;
          case FOULS -> Weight.FAULT;
        };
    String sentence =
        answer.question().head().title()
            + dress(answer.question().head())
            + " "
            + phrase(answer.verdict())
            + ": "
            + room(answer)
            + "; "
            + Say.allowanceMm(answer.question().expectedErrorMm())
            + " is to be expected ("
            + answer.question().errorMeans()
            + "). "
            + chance.map(SeatRule::success).orElse("")
            + governs(answer.governing())
            + best(answer);
    List<Finding.Figure> figures =
        new ArrayList<>(
            List.of(
                Say.mm("allowance", answer.allowanceAtIntendedMm()),
                Say.mm("allowanceAtBest", answer.allowanceAtBestMm()),
                Say.mm("expectedError", answer.question().expectedErrorMm()),
                Say.mm("governingDistance", answer.governing().distanceMm()),
                Say.mm("governingNeeded", answer.governing().neededMm())));
    chance.ifPresent(each -> figures.add(new Finding.Figure("chancePercent", percent(each))));
    return new Finding(weight, NAME, sentence, figures, doubts(answer.question().head()));
  }

  private static String dress(SeatedHead head) {
    return head.washer().map(washer -> " on its washer").orElse("")
        + head.spanner().map(spanner -> ", with room for " + spanner.spoken() + ",").orElse("");
  }

  /** Returns why the figures of all that goes on the seat are less than certain. */
  private static String doubts(SeatedHead head) {
    return Stream.of(
            Optional.of(head.caveat()),
            head.washer().map(SeatedHead.Washer::caveat),
            head.spanner().map(Spanner::standing))
        .flatMap(Optional::stream)
        .filter(words -> !words.isBlank())
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static String success(Chance chance) {
    return "The chance that the hole lands where the head sits is " + chance.percent() + ". ";
  }

  /** To a thousandth of a per cent, which is as exact as it is found. */
  private static double percent(Chance chance) {
    return Math.rint(chance.value() * 1e5) / 1e3;
  }

  /** Returns a verdict as a verb. */
  static String phrase(Verdict verdict) {
    return verdict == Verdict.TIGHT ? "is tight" : verdict.word();
  }

  private static String room(SeatAnswer answer) {
    double allowance = answer.allowanceAtIntendedMm();
    return allowance >= 0
        ? "the hole may be out by " + Say.allowanceMm(allowance)
        : "even with the hole just right it lacks " + Say.allowanceMm(-allowance);
  }

  private static String governs(Governing governing) {
    return "What governs is "
        + governing.name()
        + (governing.meets().equals("head") || governing.meets().equals("hole")
            ? ""
            : ", which the " + governing.meets() + " would meet")
        + ": "
        + Say.sizeMm(governing.distanceMm())
        + " from the centre, "
        + Say.sizeMm(governing.neededMm())
        + " needed.";
  }

  private static String best(SeatAnswer answer) {
    double moved = answer.best().distanceMm(answer.question().seat().intended());
    double gain = answer.allowanceAtBestMm() - answer.allowanceAtIntendedMm();
    return gain > Tolerances.CENTRE_SEARCH_MM * 10 && moved > Tolerances.CENTRE_SEARCH_MM
        ? " The best centre is "
            + Say.sizeMm(moved)
            + " away, with an allowance of "
            + Say.allowanceMm(answer.allowanceAtBestMm())
            + "."
        : "";
  }

  private static Finding unanswered(JointCase joint) {
    String why =
        joint.method().isEmpty()
            ? "the way of placing its hole is not known"
            : "no table has a "
                + joint.joint().fastener().style().replace('-', ' ')
                + " for "
                + joint.thread().designation();
    return Finding.of(
        Weight.CAUTION,
        NAME,
        "The seat was measured, but cannot be checked: "
            + why
            + ". Measure a head and try it as a seat file.");
  }
}
