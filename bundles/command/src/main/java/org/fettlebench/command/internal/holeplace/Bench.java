package org.fettlebench.command.internal.holeplace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.Call;
import org.fettlebench.command.internal.ChanceWords;
import org.fettlebench.command.internal.hole.DrillWords;
import org.fettlebench.command.internal.hole.DrillsAsked;
import org.fettlebench.command.internal.hole.HeldDrills;
import org.fettlebench.command.internal.method.Placings;
import org.fettlebench.command.internal.seat.OtherHeads;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanners;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.holes.correct.Cutter;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** What all commands about a hole's place need: the seat file, drills, files, methods, heads. */
@Component(service = Bench.class)
public final class Bench {
  static final String FILE = "FILE";
  static final String FILES = "--files";
  static final String CONFIDENCE = "--confidence";

  /** A round or needle file kept as a sundry, with its diameter in its name. */
  private static final Pattern ROUND_FILE =
      Pattern.compile(
          "(?i)(?=.*\\bfile\\b)(?=.*\\b(round|rat-tail|needle)\\b).*?([\\d./ ]+(mm|in)).*");

  private final KitFiles files;
  private final Placings placings;
  private final Drills drills;
  private final Stock stock;
  private final OtherHeads others;

  /** Made by the framework. */
  @Activate
  public Bench(
      @Reference KitFiles files,
      @Reference Placings placings,
      @Reference Drills drills,
      @Reference Stock stock,
      @Reference Threads threads,
      @Reference Heads heads,
      @Reference Spanners spanners) {
    this.files = files;
    this.placings = placings;
    this.drills = drills;
    this.stock = stock;
    this.others = new OtherHeads(threads, heads, spanners);
  }

  KitFiles files() {
    return files;
  }

  SeatFile seat(Call call, String name) {
    String said = call.operand(name).or(() -> call.option(name)).orElseThrow();
    String text = said.equals("-") ? call.text(name) : files.text(call.file(name));
    return files.readSeatFile(said, text);
  }

  /** Returns a drill named by an option, with or without catalogue number. */
  DrillSize drill(Call call, String name) {
    return DrillWords.read(drills, call, name);
  }

  List<Cutter> heldDrills() {
    return cutters(new HeldDrills(stock, drills).sizes());
  }

  List<Cutter> catalogue() {
    return cutters(drills.catalogue());
  }

  DrillsAsked drillsAsked(Call call) {
    return DrillsAsked.of(call, stock, drills);
  }

  static List<Cutter> cutters(List<DrillSize> sizes) {
    return sizes.stream().map(Bench::cutter).toList();
  }

  static Cutter cutter(DrillSize drill) {
    return new Cutter(drill.name(), drill.diameter().millimetres());
  }

  /** Returns the round files that were said, else those among the sundries of the stock. */
  List<Cutter> roundFiles(Call call) {
    if (call.option(FILES).isPresent()) {
      List<Cutter> said = new ArrayList<>();
      for (String size : call.option(FILES).get().split(",")) {
        said.add(file(LengthReader.read(size.strip()), "round file "));
      }
      return said;
    }
    List<Cutter> held = new ArrayList<>();
    for (StockLine line : stock.lines()) {
      if (line.goods().kind() == Goods.Kind.SUNDRY
          && line.condition() == StockLine.Condition.GOOD
          && line.present() > 0) {
        Matcher size = ROUND_FILE.matcher(line.goods().name());
        if (size.matches()) {
          addFile(held, line.goods().name(), size.group(2));
        }
      }
    }
    return held;
  }

  private static void addFile(List<Cutter> held, String name, String size) {
    try {
      held.add(new Cutter(name, LengthReader.read(size.strip()).millimetres()));
    } catch (MeasureException notItsSize) {
      // A sundry is named as people like; one whose figure is no length just is not counted.
      held.removeIf(file -> file.name().equals(name));
    }
  }

  private static Cutter file(Length size, String before) {
    return new Cutter(before + size, size.millimetres());
  }

  double confidence(Call call, double usual) {
    return ChanceWords.read(call, CONFIDENCE).orElse(usual);
  }

  /** Returns what is known of a way of placing a hole, for whom the call asks. */
  MethodEstimate method(Call call, String id) {
    return placings.one(call, id);
  }

  List<ExpectedError> methods(Call call, double confidence) {
    return placings.now(call).stream().map(method -> expected(method, confidence)).toList();
  }

  static ExpectedError expected(HoleMethod method, double confidence) {
    return new ExpectedError(
        method.title().toLowerCase(Locale.ROOT),
        method.errorRadiusMm(confidence),
        percent(confidence) + " of holes; " + method.standing());
  }

  static String percent(double confidence) {
    double percent = Math.round(confidence * 1e5) / 1e3;
    return (percent == Math.rint(percent)
            ? Long.toString((long) percent)
            : Double.toString(percent))
        + " %";
  }

  List<SeatedHead> otherHeads(SeatQuestion question) {
    return others.of(question.head());
  }
}
