package org.fettlebench.command.internal.head;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.Footnotes;
import org.fettlebench.command.internal.Refusals;
import org.fettlebench.command.internal.thread.ThreadWords;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fasteners.scale.ScaleLook;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.Threads;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Tells how far over or under scale a fastener's hexagon looks on a model. */
@Component(property = Commands.WORDS + "=head scale")
public final class HeadScale implements Command {
  private static final Pattern SCALE = Pattern.compile("(?:1\\s*[:/]\\s*)?(\\d+(?:\\.\\d+)?)");

  /** Threads so near in diameter stand in for one another: common practice, no source. */
  static final double NEAR = 0.2;

  private static final int MOST_OTHERS = 8;
  private static final Usage USAGE =
      Usage.of(
              "head scale",
              "Tells how far over or under scale the hexagons for a thread look on a model.",
              "head scale 8 BA --scale 1:12")
          .needsMany("THREAD", "of the model, such as 8 BA, M2")
          .option("--scale", "1:N", "of the model, such as 1:12 or 12")
          .option("--full", "THREAD", "the full-size thread; the nearest of --series if not said")
          .option("--series", "ID", "series of the full-size thread; BSW if not said")
          .option("--style", "STYLE", "full-size head; hexagon if not said; older: large-hexagon");

  private final Threads threads;
  private final Heads heads;
  private final FullSize fullSize;

  /** Made by the framework. */
  @Activate
  public HeadScale(@Reference Threads threads, @Reference Heads heads) {
    this.threads = threads;
    this.heads = heads;
    this.fullSize = new FullSize(threads, heads);
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    ThreadCall called = ThreadWords.called(threads, call.operand("THREAD").orElseThrow());
    return ThreadWords.told(called, answer(call, called.thread()));
  }

  private Reply answer(Call call, ScrewThread model) {
    double oneTo = scale(call);
    Head full = fullSize.of(call, model, oneTo);
    List<ScaleLook> looks = Refusals.ask(() -> looks(model, full, oneTo));
    Object data =
        Data.of(
            "thread", model.designation(),
            "scaleOneTo", Data.rounded(oneTo, 6),
            "scaledUpMajorMm", Data.mm(model.major().millimetres() * oneTo),
            "fullSize", full.title(),
            "fullAcrossFlatsMm", full.acrossFlats().map(Data::mm),
            "fullAcrossFlatsIn", full.acrossFlats().map(Data::in),
            "fullSource", Figures.sourceData(full.source()),
            "looks", looks.stream().map(HeadScale::data).toList());
    return Reply.of(looks.isEmpty(), text(model, oneTo, full, looks, call.unit()), data);
  }

  private static double scale(Call call) {
    String typed =
        call.option("--scale")
            .orElseThrow(() -> new CommandException("say --scale, such as --scale 1:12"));
    Matcher matcher = SCALE.matcher(typed.strip());
    if (!matcher.matches()) {
      throw new CommandException("--scale \"" + typed + "\" is no scale; write 1:12 or 12");
    }
    double oneTo = Double.parseDouble(matcher.group(1));
    if (!(oneTo >= 1 && oneTo <= 1000)) {
      throw new CommandException("scale 1:" + matcher.group(1) + " is outside 1:1 to 1:1000");
    }
    return oneTo;
  }

  /** All heads of the thread itself, and the nearest of threads near it in diameter. */
  private List<ScaleLook> looks(ScrewThread model, Head full, double oneTo) {
    double major = model.major().millimetres();
    List<Head> near =
        threads.series().stream()
            .flatMap(series -> series.threads().stream())
            .filter(other -> !other.designation().equals(model.designation()))
            .filter(other -> Math.abs(other.major().millimetres() / major - 1) <= NEAR)
            .flatMap(other -> heads.forThread(other).stream())
            .distinct()
            .toList();
    List<Head> shown = new ArrayList<>(heads.forThread(model));
    ScaleLook.ranked(near, full, oneTo).stream()
        .limit(MOST_OTHERS)
        .forEach(look -> shown.add(look.head()));
    return ScaleLook.ranked(shown, full, oneTo);
  }

  private static String text(
      ScrewThread model, double oneTo, Head full, List<ScaleLook> looks, LengthUnit unit) {
    Footnotes notes = new Footnotes();
    String scale = String.format(Locale.ROOT, "1:%s", Data.rounded(oneTo, 6).toPlainString());
    Columns columns =
        new Columns()
            .indent(2)
            .row("head or nut", "across flats", "stands for", "against scale", "");
    for (ScaleLook look : looks) {
      columns.row(
          look.head().title(),
          Figures.size(look.head().acrossFlats().orElseThrow().millimetres(), unit),
          Figures.size(look.standsFor().millimetres(), unit),
          String.format(Locale.ROOT, "%+.1f %%", look.overPercent()),
          notes.mark(Figures.source(look.head().source())));
    }
    String wanted =
        looks.stream()
            .findFirst()
            .map(look -> ", to scale " + Figures.size(look.scaled().millimetres(), unit))
            .orElse("");
    return model.designation()
        + " at "
        + scale
        + " stands for "
        + Figures.size(model.major().millimetres() * oneTo, unit)
        + "; "
        + full.title()
        + " is "
        + Figures.size(full.acrossFlats().orElseThrow().millimetres(), unit)
        + " across flats"
        + wanted
        + " "
        + notes.mark(Figures.source(full.source()))
        + "\n"
        + (looks.isEmpty() ? "  no table has a head with flats near it" : columns.text())
        + notes.text();
  }

  private static Object data(ScaleLook look) {
    return Data.of(
        "title", look.head().title(),
        "thread", look.head().thread(),
        "style", look.head().style(),
        "acrossFlatsMm", look.head().acrossFlats().map(Data::mm),
        "standsForMm", Data.mm(look.standsFor()),
        "standsForIn", Data.in(look.standsFor()),
        "scaledAcrossFlatsMm", Data.mm(look.scaled()),
        "overPercent", Data.rounded(look.overPercent(), 4),
        "source", Figures.sourceData(look.head().source()));
  }
}
