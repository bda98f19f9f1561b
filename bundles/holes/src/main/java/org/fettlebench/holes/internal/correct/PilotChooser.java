package org.fettlebench.holes.internal.correct;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fettlebench.holes.correct.Cutter;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.holes.correct.PilotAnswer;
import org.fettlebench.holes.correct.PilotAnswer.Remedy;
import org.fettlebench.holes.correct.PilotAnswer.Rung;
import org.fettlebench.holes.correct.PilotQuestion;
import org.fettlebench.holes.correct.Pilots;
import org.fettlebench.holes.internal.Say;
import org.fettlebench.measure.Tolerances;
import org.osgi.service.component.annotations.Component;

/** Chooses the largest pilot after which the expected error can still be filed away. */
@Component
public final class PilotChooser implements Pilots {
  private static final Comparator<Cutter> LARGEST_FIRST =
      Comparator.comparingDouble(Cutter::diameterMm).reversed();

  @Override
  public PilotAnswer choose(PilotQuestion question) {
    double expected = question.expected().radiusMm();
    List<Rung> ladder = ladder(question, question.held(), expected);
    Optional<Rung> choice = first(ladder);
    return new PilotAnswer(
        question,
        ladder,
        choice,
        choice.isPresent() ? List.of() : remedies(question),
        question.held().stream()
            .anyMatch(d -> Tolerances.sameMm(d.diameterMm(), question.finishDiameterMm())));
  }

  private static Optional<Rung> first(List<Rung> ladder) {
    return ladder.stream().filter(Rung::covers).findFirst();
  }

  private static List<Rung> ladder(PilotQuestion question, List<Cutter> drills, double errorMm) {
    double finish = question.finishDiameterMm();
    return drills.stream()
        .filter(drill -> drill.diameterMm() < finish - Tolerances.GEOMETRY_SLACK_MM)
        .sorted(LARGEST_FIRST)
        .map(
            drill -> {
              double curable = question.cleanUp().curableMm(drill.diameterMm(), finish);
              return new Rung(drill, curable, curable >= errorMm - Tolerances.GEOMETRY_SLACK_MM);
            })
        .toList();
  }

  private static List<Remedy> remedies(PilotQuestion question) {
    List<Remedy> remedies = new ArrayList<>();
    careful(question).ifPresent(remedies::add);
    first(ladder(question, question.catalogue(), question.expected().radiusMm()))
        .map(PilotChooser::buy)
        .ifPresent(remedies::add);
    return remedies;
  }

  private static Optional<Remedy> careful(PilotQuestion question) {
    for (ExpectedError other : question.otherMethods()) {
      if (other.radiusMm() < question.expected().radiusMm()) {
        Optional<Rung> pilot = first(ladder(question, question.held(), other.radiusMm()));
        if (pilot.isPresent()) {
          return pilot.map(rung -> careful(other, rung));
        }
      }
    }
    return Optional.empty();
  }

  private static Remedy careful(ExpectedError other, Rung rung) {
    return new Remedy(
        Remedy.Kind.CAREFUL_METHOD,
        "place the hole by "
            + other.title()
            + ", within "
            + Say.small(other.radiusMm())
            + " ("
            + other.means()
            + "): then "
            + rung.drill().name()
            + " will do, it leaves "
            + Say.small(rung.curableMm())
            + " that can be cured",
        rung);
  }

  private static Remedy buy(Rung rung) {
    return new Remedy(
        Remedy.Kind.BUY_PILOT,
        "get a pilot of "
            + rung.drill().name()
            + " or smaller: it leaves "
            + Say.small(rung.curableMm())
            + " that can be cured",
        rung);
  }
}
