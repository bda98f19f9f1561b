package org.fettlebench.command.internal.thread;

import java.util.List;
import java.util.Optional;
import org.fettlebench.command.CommandException;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.HoleChooser;
import org.fettlebench.tooling.TappingChoice;

/** The tapping drill out of the whole catalogue, as {@code hole plan --catalogue} suggests it. */
final class BatchTapping implements BatchFigure {
  private record Asked(ScrewThread thread, Optional<Double> percent, String material) {}

  private record Found(double wanted, Optional<TappingChoice> choice) {}

  private final HoleChooser chooser;
  private final List<DrillSize> catalogue;
  private final Recent<Asked, Found> recent = new Recent<>(this::find);

  BatchTapping(HoleChooser chooser, List<DrillSize> catalogue) {
    this.chooser = chooser;
    this.catalogue = catalogue;
  }

  @Override
  public String word() {
    return "tapping";
  }

  @Override
  public List<String> columns(LengthUnit unit) {
    return List.of(
        "tapping_percent_wanted",
        "tapping_drill",
        "tapping_drill_" + unit.symbol(),
        "tapping_percent",
        "tapping_concern");
  }

  @Override
  public List<String> reads() {
    return List.of("percent", "material");
  }

  @Override
  public void write(ThreadCall called, BatchRow row, BatchLine line) {
    Found found =
        recent.of(
            new Asked(
                called.thread(), row.number("percent", 0, 100), row.cell("material").orElse("")));
    TappingChoice choice =
        found
            .choice()
            .orElseThrow(
                () ->
                    new CommandException(
                        "no drill of the catalogue is a tapping drill for "
                            + called.thread().designation()));
    line.number(found.wanted(), 3)
        .text(choice.drill().name())
        .length(choice.drill().diameter())
        .number(choice.percentOfThread(), 3)
        .text(choice.concern().map(words -> LengthFormat.turned(words, line.unit())).orElse(""));
  }

  private Found find(Asked asked) {
    HoleChooser.PercentWanted usual = chooser.usualPercent(asked.material());
    List<TappingChoice> ranked =
        asked
            .percent()
            .map(percent -> chooser.tapping(asked.thread(), percent, catalogue))
            .orElseGet(() -> chooser.tapping(asked.thread(), usual, catalogue));
    return new Found(
        asked.percent().orElse(usual.percent()),
        ranked.stream()
            .filter(choice -> choice.concern().isEmpty())
            .findFirst()
            .or(() -> ranked.stream().findFirst()));
  }
}
