package org.fettlebench.command.internal.tap;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;
import org.fettlebench.tooling.HoleChooser.PercentWanted;
import org.fettlebench.tooling.TappingChoice;
import org.fettlebench.tooling.work.WorkMaterial;

/** Reads the hole out of a call: as said, else the drill for the usual per cent of thread. */
final class TapHoleWords {
  private final Drills drills;
  private final HoleChooser chooser;

  TapHoleWords(Drills drills, HoleChooser chooser) {
    this.drills = drills;
    this.chooser = chooser;
  }

  TapHole read(Call call, ScrewThread thread, WorkMaterial material, List<DrillSize> from) {
    Optional<String> drill = call.option("--drill");
    Optional<Double> percent = call.number("--percent", 0, 100);
    if (drill.isPresent() && percent.isPresent()) {
      throw new CommandException("say --drill or --percent, not both");
    }
    if (drill.isPresent()) {
      return said(drill.get());
    }
    return percent
        .map(p -> new TapHole(thread.holeFor(p), "a hole", words(p) + " as said"))
        .orElseGet(() -> usual(thread, material, from));
  }

  private TapHole said(String typed) {
    return drills
        .find(typed)
        .map(drill -> new TapHole(drill.diameter(), drill.name(), "drill as said"))
        .orElseThrow(
            () ->
                new CommandException(
                    "--drill \""
                        + typed
                        + "\" is no drill and no length; say it like 5/32, 4.1 mm, No 22 or F"));
  }

  private TapHole usual(ScrewThread thread, WorkMaterial material, List<DrillSize> from) {
    PercentWanted usual = chooser.usualPercent(material.name());
    String why = words(usual.percent()) + " wanted: " + Figures.source(usual.source());
    List<TappingChoice> choices = chooser.tapping(thread, usual.percent(), from);
    return choices.stream()
        .filter(choice -> choice.concern().isEmpty())
        .findFirst()
        .or(() -> choices.stream().findFirst())
        .map(choice -> new TapHole(choice.drill().diameter(), choice.drill().name(), why))
        .orElseGet(() -> ideal(thread.holeFor(usual.percent()), why));
  }

  private static TapHole ideal(Length hole, String why) {
    return new TapHole(hole, "a hole", why + "; no drill at hand makes it");
  }

  private static String words(double percent) {
    return String.format(Locale.ROOT, "%.0f %% of thread", percent);
  }
}
