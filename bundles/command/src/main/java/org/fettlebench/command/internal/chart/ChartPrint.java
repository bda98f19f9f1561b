package org.fettlebench.command.internal.chart;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.hole.HeldDrills;
import org.fettlebench.paper.WallChart;
import org.fettlebench.paper.WallCharts;
import org.fettlebench.paper.WallPaper;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Draws thread series and the drills that the club holds for them as a chart for the wall. */
@Component(service = Command.class, property = Commands.WORDS + "=chart print")
public final class ChartPrint implements Command {
  private static final Usage USAGE =
      Usage.of(
              "chart print",
              "Draws threads and the drills held for them as a chart for the wall (PDF).",
              "chart print BA ME --paper a3 --to wall.pdf")
          .needsMany("SERIES", "ids such as BA ME BSF; \"thread list\" shows them")
          .option("--to", "FILE", "the PDF to write")
          .option("--paper", "SHEET", "a4 (if not said) or a3")
          .option("--material", "NAME", "what is mostly tapped; gives the per cent of thread")
          .option("--holder", "NAME", "whose drills they are, for the head of the chart");

  private final WallCharts charts;
  private final Drills drills;
  private final Stock stock;

  /** Made by the framework. */
  @Activate
  public ChartPrint(
      @Reference WallCharts charts, @Reference Drills drills, @Reference Stock stock) {
    this.charts = charts;
    this.drills = drills;
    this.stock = stock;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    if (call.option("--to").isEmpty()) {
      throw new CommandException("say where the chart goes: --to FILE, such as --to wall.pdf");
    }
    Path file = call.file("--to");
    List<DrillSize> held = new HeldDrills(stock, drills).sizes();
    WallChart chart =
        new WallChart(
            series(call),
            call.option("--material").orElse(""),
            held,
            call.option("--holder").orElse(""),
            paper(call),
            call.unit());
    int sheets = write(chart, file);
    return Reply.done(
        "%s of %s: %s, with %s held"
            .formatted(
                Figures.count(sheets, "sheet"),
                chart.paper(),
                file,
                Figures.count(held.size(), "drill")),
        Data.of(
            "file", file.toString(),
            "paper", chart.paper().name().toLowerCase(Locale.ROOT),
            "series", chart.series(),
            "sheetCount", sheets,
            "heldDrillCount", held.size()));
  }

  private static List<String> series(Call call) {
    return call.operands("SERIES").stream()
        .flatMap(word -> Stream.of(word.split("[, ]+")))
        .filter(word -> !word.isBlank())
        .distinct()
        .toList();
  }

  private static WallPaper paper(Call call) {
    String said = call.option("--paper").orElse(WallPaper.A4.name());
    return WallPaper.ofWord(said)
        .orElseThrow(
            () ->
                new CommandException(
                    "--paper \""
                        + said
                        + "\" is no sheet; say "
                        + Stream.of(WallPaper.values())
                            .map(paper -> paper.name().toLowerCase(Locale.ROOT))
                            .collect(Collectors.joining(" or "))));
  }

  private int write(WallChart chart, Path file) {
    // Whole in memory first, so that a failure leaves no half a file.
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      int sheets = charts.write(chart, bytes);
      Files.write(file, bytes.toByteArray());
      return sheets;
    } catch (IllegalArgumentException refused) {
      throw new CommandException(refused.getMessage(), refused);
    } catch (IOException failed) {
      throw new CommandException(
          "the chart cannot be written to "
              + file
              + ": "
              + failed
              + "; name a file in a folder of yours",
          failed);
    }
  }
}
