package org.fettlebench.command.internal.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.thread.ThreadWords;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fasteners.grip.Into;
import org.fettlebench.fasteners.grip.LengthWanted;
import org.fettlebench.fasteners.grip.ScrewReach;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.Threads;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Tells which length of screw a joint wants, and which of those held will do. */
@Component(property = Commands.WORDS + "=joint length")
public final class JointLength implements Command {
  private static final Usage USAGE =
      Usage.of(
              "joint length",
              "Tells the length of screw that a joint wants, and which held screws will do.",
              "joint length 2 BA --passed \"6 mm\" --blind \"9 mm\"")
          .needsMany("THREAD", "such as 2 BA, M6, 1/4 BSF")
          .option("--passed", "LENGTH", "thickness that the screw passes, washers among it")
          .option("--blind", "LENGTH", "full thread of a tapped hole that ends")
          .option("--through", "LENGTH", "full thread of a tapped hole right through")
          .flag("--nut", "a hexagon nut, as high as the tables have it")
          .option("--screw", "LENGTH", "a length under the head, to be looked at")
          .option("--style", "STYLE", "only held screws with this head, such as hexagon");

  private final Threads threads;
  private final Heads heads;
  private final Stock stock;

  /** Made by the framework. */
  @Activate
  public JointLength(@Reference Threads threads, @Reference Heads heads, @Reference Stock stock) {
    this.threads = threads;
    this.heads = heads;
    this.stock = stock;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  /** A screw that was looked at. */
  private record Line(String name, String place, int present, ScrewReach reach) {}

  @Override
  public Reply run(Call call) {
    ThreadCall called = ThreadWords.called(threads, call.operand("THREAD").orElseThrow());
    return ThreadWords.told(called, answer(call, called.thread()));
  }

  private Reply answer(Call call, ScrewThread thread) {
    Length passed =
        call.length("--passed")
            .orElseThrow(
                () -> new CommandException("say --passed: what the screw passes, 0 mm if nothing"));
    Into into = into(call, thread);
    List<Line> lines = lines(call, thread, passed, into);
    boolean good =
        lines.stream().anyMatch(line -> line.reach().verdict() == ScrewReach.Verdict.GOOD);
    LengthWanted wanted = LengthWanted.of(thread, passed, into);
    return Reply.of(
        !good,
        text(thread, into, lines, new Shown(wanted, call.unit())),
        Data.of(
            "thread", thread.designation(),
            "passedMm", Data.mm(passed),
            "into", into.kind().name().toLowerCase(java.util.Locale.ROOT),
            "fullThreadMm", Data.mm(into.fullThread()),
            "leastLengthMm", Data.mm(wanted.least()),
            "mostLengthMm", wanted.most().map(Data::mm),
            "screws", lines.stream().map(JointLength::data).toList()));
  }

  private Into into(Call call, ScrewThread thread) {
    List<Into> said = new ArrayList<>();
    call.length("--blind").ifPresent(depth -> said.add(new Into(Into.Kind.BLIND, depth)));
    call.length("--through").ifPresent(depth -> said.add(new Into(Into.Kind.THROUGH, depth)));
    if (call.on("--nut")) {
      said.add(
          new Into(
              Into.Kind.NUT,
              heads
                  .find("hexagon-nut", thread)
                  .flatMap(nut -> nut.height())
                  .orElseThrow(
                      () ->
                          new CommandException(
                              "no table has the height of a hexagon nut for "
                                  + thread.designation()
                                  + "; measure one and say it as --through"))));
    }
    if (said.size() != 1) {
      throw new CommandException("say one of --blind, --through and --nut");
    }
    return said.get(0);
  }

  private List<Line> lines(Call call, ScrewThread thread, Length passed, Into into) {
    Optional<Length> asked = call.length("--screw");
    if (asked.isPresent()) {
      return List.of(new Line("as asked", "", 0, ScrewReach.of(thread, asked.get(), passed, into)));
    }
    Optional<String> style = call.option("--style").map(word -> word.replace(' ', '-'));
    return stock.lines().stream()
        .filter(line -> line.goods().kind() == Goods.Kind.FASTENER)
        .filter(line -> line.condition() == StockLine.Condition.GOOD && line.present() > 0)
        .filter(line -> line.goods().length().isPresent())
        .filter(line -> threads.find(line.goods().thread()).filter(thread::equals).isPresent())
        .filter(line -> line.goods().style().equals(style.orElse(line.goods().style())))
        // A stud has no head to measure its length from.
        .filter(line -> !line.goods().style().equals("stud"))
        .map(line -> line(line, thread, passed, into))
        .sorted(
            Comparator.comparing((Line line) -> line.reach().verdict())
                .thenComparing(line -> line.reach().length()))
        .toList();
  }

  private static Line line(StockLine line, ScrewThread thread, Length passed, Into into) {
    Length length = line.goods().length().orElseThrow();
    return new Line(
        line.goods().name(),
        line.place(),
        line.present(),
        ScrewReach.of(thread, length, passed, into));
  }

  /** What is wanted, and the unit of the figures. */
  private record Shown(LengthWanted wanted, LengthUnit unit) {}

  private static boolean shallow(ScrewThread thread, Into into) {
    return into.kind() != Into.Kind.NUT
        && into.fullThread().millimetres()
            < ScrewReach.USUAL_DIAMETERS * thread.major().millimetres();
  }

  private static String text(ScrewThread thread, Into into, List<Line> lines, Shown shown) {
    LengthWanted wanted = shown.wanted();
    LengthUnit unit = shown.unit();
    List<String> text = new ArrayList<>();
    text.add(
        thread.designation()
            + ": a screw from "
            + Figures.size(wanted.least().millimetres(), unit)
            + wanted.most().map(most -> " to " + Figures.size(most.millimetres(), unit)).orElse("")
            + " under the head"
            + (wanted.most().filter(most -> most.compareTo(wanted.least()) < 0).isPresent()
                ? ", which cannot be"
                : ""));
    Columns columns =
        new Columns()
            .indent(2)
            .row("screw", "length", "engaged", "diameters", "beyond", "verdict", "where");
    for (Line line : lines) {
      columns.row(
          line.name(),
          Figures.size(line.reach().length().millimetres(), unit),
          Figures.size(line.reach().engaged().millimetres(), unit),
          String.format(java.util.Locale.ROOT, "%.1f", line.reach().engagedDiameters()),
          Figures.allowance(line.reach().beyond().millimetres(), unit),
          verdict(line.reach(), unit),
          line.place().isEmpty() ? "" : line.present() + " in " + line.place());
    }
    if (shallow(thread, into)) {
      text.add(
          "  the thread is only "
              + String.format(
                  java.util.Locale.ROOT,
                  "%.1f",
                  into.fullThread().millimetres() / thread.major().millimetres())
              + " diameters deep: no screw engages more than that in it");
    }
    text.add(lines.isEmpty() ? "  no such screw is held" : columns.text());
    text.add(
        "  At least one diameter engaged: common practice, no source; thread strength tells what"
            + " strips first.");
    return String.join("\n", text);
  }

  private static String verdict(ScrewReach reach, LengthUnit unit) {
    return reach.verdict() == ScrewReach.Verdict.BOTTOMS
        ? "bottoms: shorten by " + Figures.allowance(reach.beyond().millimetres(), unit)
        : reach.verdict().word();
  }

  private static Object data(Line line) {
    return Data.of(
        "name", line.name(),
        "place", Data.said(line.place()),
        "present", line.present(),
        "lengthMm", Data.mm(line.reach().length()),
        "reachMm", Data.mm(line.reach().reach()),
        "engagedMm", Data.mm(line.reach().engaged()),
        "engagedDiameters", Data.rounded(line.reach().engagedDiameters(), 4),
        "beyondMm", Data.mm(line.reach().beyond()),
        "verdict", line.reach().verdict().word());
  }
}
