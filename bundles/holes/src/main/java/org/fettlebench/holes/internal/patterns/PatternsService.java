package org.fettlebench.holes.internal.patterns;

import org.fettlebench.holes.chance.Chance;
import org.fettlebench.holes.patterns.MeasuredPattern;
import org.fettlebench.holes.patterns.PatternFit;
import org.fettlebench.holes.patterns.PatternPart;
import org.fettlebench.holes.patterns.PatternQuestion;
import org.fettlebench.holes.patterns.Patterns;
import org.fettlebench.holes.patterns.PlacingLaw;
import org.fettlebench.holes.patterns.PlayNeeded;
import org.fettlebench.holes.patterns.SpottingAnswer;
import org.osgi.service.component.annotations.Component;

/** Answers questions of patterns by simulation and by exact movement. */
@Component
public final class PatternsService implements Patterns {
  @Override
  public Chance chance(PatternQuestion question) {
    return PlayNeeded.counted(new Simulation(question).good(), question.trials());
  }

  @Override
  public PlayNeeded needed(PatternQuestion question) {
    return PlayNeeded.of(new Simulation(question).needsMm());
  }

  @Override
  public SpottingAnswer spotting(
      PatternQuestion question, boolean upperFirst, PlacingLaw spotting) {
    PatternPart first = upperFirst ? question.upper() : question.lower();
    PatternPart second = upperFirst ? question.lower() : question.upper();
    // The first part's errors are in both, so that only those of the spotting lie between them.
    PatternPart sameAsFirst = first.placed(PlacingLaw.exact());
    PatternPart spotted = second.placed(spotting);
    PatternQuestion together =
        question.withParts(upperFirst ? sameAsFirst : spotted, upperFirst ? spotted : sameAsFirst);
    double firstSigma = first.placing().sigmaPerAxisMm();
    return new SpottingAnswer(
        chance(question),
        chance(together),
        first.name(),
        second.name(),
        firstSigma,
        second.placing().sigmaPerAxisMm(),
        Math.hypot(firstSigma, spotting.sigmaPerAxisMm()));
  }

  @Override
  public PatternFit fit(MeasuredPattern measured) {
    return new MeasuredFit(measured).answer();
  }
}
