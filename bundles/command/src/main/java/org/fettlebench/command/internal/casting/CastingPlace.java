package org.fettlebench.command.internal.casting;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.fettlebench.castings.CastingDrawings;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Castings;
import org.fettlebench.castings.Placing;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.PaperFile;
import org.fettlebench.command.internal.Refusals;
import org.fettlebench.drawing.SvgWriter;
import org.fettlebench.kits.CastingFile;
import org.fettlebench.kits.KitFiles;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Tells whether a rough casting cleans up, what comes off each face, and where to set out from. */
@Component(property = Commands.WORDS + "=casting place")
public final class CastingPlace implements Command {
  // Half an A4 sheet with its margins.
  private static final double WIDTH_MM = 180;
  private static final double HEIGHT_MM = 125;
  private static final Usage USAGE =
      Usage.of(
              "casting place",
              "Tells whether a rough casting cleans up, what comes off each face, and where to set"
                  + " out from.",
              "casting place bracket.casting.toml")
          .needs("FILE", "a casting file; - for piped in")
          .option("--svg", "FILE", "write a drawing to scale there")
          .option(CastingPapers.CARD, "FILE", "write the marking-out card (PDF) there")
          .option("--view", "VIEW", "of the drawing: plan, front or side; front if not said");

  private final KitFiles files;
  private final Castings castings;
  private final CastingDrawings drawings;
  private final CastingPapers papers;

  /** Made by the framework. */
  @Activate
  public CastingPlace(
      @Reference KitFiles files,
      @Reference Castings castings,
      @Reference CastingDrawings drawings,
      @Reference CastingPapers papers) {
    this.files = files;
    this.castings = castings;
    this.drawings = drawings;
    this.papers = papers;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    CastingView view = view(call);
    CastingFile file = read(call);
    Placing placing = Refusals.ask(() -> castings.place(file.casting()));
    if (call.option("--svg").isPresent()) {
      PaperFile.write(
          call.file("--svg"),
          SvgWriter.write(drawings.draw(placing, view, call.unit()), WIDTH_MM, HEIGHT_MM));
    }
    String card =
        papers.card(call, placing, file.holdsPressure()).map(said -> "\n" + said).orElse("");
    return Reply.of(
        !placing.cleansUp(),
        PlacingTexts.text(placing, file.holdsPressure(), call.unit()) + card,
        PlacingTexts.data(placing, file.holdsPressure()));
  }

  private static CastingView view(Call call) {
    String said = call.option("--view").orElse("front");
    if (call.option("--view").isPresent() && call.option("--svg").isEmpty()) {
      throw new CommandException("--view is of a drawing; say --svg FILE too");
    }
    return Arrays.stream(CastingView.values())
        .filter(view -> word(view).equals(said.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                new CommandException(
                    "'"
                        + said
                        + "' is no view; say "
                        + Arrays.stream(CastingView.values())
                            .map(CastingPlace::word)
                            .collect(Collectors.joining(", "))));
  }

  private static String word(CastingView view) {
    return view.name().toLowerCase(Locale.ROOT);
  }

  private CastingFile read(Call call) {
    String name = call.operand("FILE").orElseThrow();
    String text = "-".equals(name) ? call.text("FILE") : files.text(call.file("FILE"));
    return files.readCasting(name, text);
  }
}
