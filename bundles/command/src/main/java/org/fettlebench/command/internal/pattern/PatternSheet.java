package org.fettlebench.command.internal.pattern;

import java.util.List;
import java.util.Map;
import org.fettlebench.command.Call;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.ChanceWords;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.method.Placings;
import org.fettlebench.holes.chance.Chance;
import org.fettlebench.holes.patterns.PatternPart;
import org.fettlebench.holes.patterns.PatternQuestion;
import org.fettlebench.holes.patterns.PlacingLaw;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.PatternFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/** What the commands about patterns share: the file, the simulation's options, words of chance. */
final class PatternSheet {
  // Half a per cent at worst: enough to choose a drill by.
  private static final int USUAL_TRIALS = 20_000;
  private static final int MOST_TRIALS = 10_000_000;
  private static final int LEAST_TRIALS = 100;
  private static final int USUAL_SEED = 1;

  private PatternSheet() {}

  static PatternFile read(KitFiles files, Call call) {
    return files.readPattern(call.operand("FILE").orElseThrow(), text(files, call));
  }

  /** Reads the file with its ways of placing holes as the club has measured them. */
  static PatternFile read(KitFiles files, Call call, Placings placings) {
    return files.readPattern(
        call.operand("FILE").orElseThrow(), text(files, call), placings.asKnown(call));
  }

  private static String text(KitFiles files, Call call) {
    return call.operand("FILE").filter("-"::equals).isPresent()
        ? call.text("FILE")
        : files.text(call.file("FILE"));
  }

  static Usage simulated(Usage usage) {
    return Placings.options(usage)
        .option("--trials", "N", "pairs of parts to simulate, 100 to 10000000; 20000 if not said")
        .option("--seed", "N", "of the simulation; the same gives the same; 1 if not said");
  }

  static int trials(Call call) {
    return call.whole("--trials", LEAST_TRIALS, MOST_TRIALS).orElse(USUAL_TRIALS);
  }

  static int seed(Call call) {
    return call.whole("--seed", 0, Integer.MAX_VALUE).orElse(USUAL_SEED);
  }

  /** Returns a chance asked, above 0 and below 1. */
  static double asked(Call call) {
    // Common practice, no source: the usual 19 in 20.
    return ChanceWords.read(call, "--chance").orElse(0.95);
  }

  static String percent(double chance) {
    return String.format(java.util.Locale.ROOT, "%.2f %%", 100 * chance);
  }

  static String said(Chance chance) {
    return percent(chance.value())
        + ", standard error "
        + percent(chance.standardError())
        + " of "
        + chance.trials()
        + " trials";
  }

  static Map<String, Object> data(Chance chance) {
    return Data.of(
        "chance", Data.rounded(chance.value(), 6),
        "standardError", Data.rounded(chance.standardError(), 6),
        "trials", chance.trials());
  }

  static String part(PatternPart part, LengthUnit unit) {
    return (part.tapped()
            ? "tapped"
            : "hole "
                + LengthFormat.showBoth(
                    Length.ofMillimetres(part.clearanceMm().getAsDouble()), unit))
        + ", "
        + part.placing().means()
        + ", sigma per axis "
        + LengthFormat.allowanceBoth(Length.ofMillimetres(part.placing().sigmaPerAxisMm()), unit);
  }

  /** Returns what was assumed of holes that lean, a line with its end; empty when none does. */
  static String leaning(PatternQuestion question, LengthUnit unit) {
    PlacingLaw leaning = question.leaning();
    return leaning.law().isEmpty()
        ? ""
        : "Tapped holes "
            + leaning.means()
            + ": fasteners stand over by sigma per axis "
            + LengthFormat.allowanceBoth(Length.ofMillimetres(leaning.sigmaPerAxisMm()), unit)
            + " at the far face, normal and apart from where the hole lands; they do not bend, and"
            + " must pass at both faces.\n";
  }

  static Object parts(PatternQuestion question) {
    return List.of(part(question.upper()), part(question.lower()));
  }

  private static Map<String, Object> part(PatternPart part) {
    return Data.of(
        "name", part.name(),
        "tapped", part.tapped(),
        "holeDiameterMm",
            part.tapped()
                ? java.util.Optional.empty()
                : java.util.Optional.of(Data.mm(part.clearanceMm().getAsDouble())),
        "placing", part.placing().means(),
        "sigmaPerAxisMm", Data.mm(part.placing().sigmaPerAxisMm()),
        "leaningSigmaPerAxisMm",
            part.leaning().law().map(law -> Data.mm(part.leaning().sigmaPerAxisMm())));
  }
}
