package org.fettlebench.command.internal.pattern;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Refusals;
import org.fettlebench.drawing.SvgWriter;
import org.fettlebench.holes.patterns.MeasuredPattern;
import org.fettlebench.holes.patterns.PatternDrawings;
import org.fettlebench.holes.patterns.PatternFit;
import org.fettlebench.holes.patterns.Patterns;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.PatternFile;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Tells whether measured holes go together, by which movement, and what to open or file. */
@Component(property = Commands.WORDS + "=pattern fit")
public final class PatternFitCommand implements Command {
  // Half an A4 sheet with its margins.
  private static final double WIDTH_MM = 180;
  private static final double HEIGHT_MM = 125;
  private static final Usage USAGE =
      Usage.of(
              "pattern fit",
              "Tells whether the measured holes of two parts go together, and what to open or"
                  + " file.",
              "pattern fit flange.pattern.toml")
          .needs("FILE", "a pattern file with measured holes; - for piped in")
          .option("--svg", "FILE", "write a drawing to scale there");

  private final KitFiles files;
  private final Patterns patterns;
  private final PatternDrawings drawings;

  /** Made by the framework. */
  @Activate
  public PatternFitCommand(
      @Reference KitFiles files,
      @Reference Patterns patterns,
      @Reference PatternDrawings drawings) {
    this.files = files;
    this.patterns = patterns;
    this.drawings = drawings;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    PatternFile file = PatternSheet.read(files, call);
    MeasuredPattern measured = Refusals.ask(file::measured);
    PatternFit fit = patterns.fit(measured);
    if (call.option("--svg").isPresent()) {
      write(call, fit);
    }
    return Reply.of(!fit.goes(), FitTexts.text(fit, call.unit()), FitTexts.data(fit));
  }

  private void write(Call call, PatternFit fit) {
    Path path = call.file("--svg");
    try {
      Files.writeString(
          path, SvgWriter.write(drawings.draw(fit, call.unit()), WIDTH_MM, HEIGHT_MM));
    } catch (IOException e) {
      throw new CommandException("the drawing cannot be written to " + path + ": " + e, e);
    }
  }
}
