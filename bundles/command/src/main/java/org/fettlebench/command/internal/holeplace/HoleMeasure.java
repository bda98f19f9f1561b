package org.fettlebench.command.internal.holeplace;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.PaperFile;
import org.fettlebench.drawing.SvgWriter;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.holes.correct.Direction;
import org.fettlebench.holes.correct.HoleMeasuring;
import org.fettlebench.holes.correct.MeasuredHole;
import org.fettlebench.holes.correct.MeasuredHole.Agreement;
import org.fettlebench.holes.correct.MeasuringQuestion;
import org.fettlebench.holes.correct.Reading;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Finds where a drilled hole is from what rule and calliper said. */
@Component(property = Commands.WORDS + "=hole measure")
public final class HoleMeasure implements Command {
  static final double WIDTH_MM = 180;
  static final double HEIGHT_MM = 125;
  private static final Usage USAGE =
      Usage.of(
              "hole measure",
              "Finds where a drilled hole is, from readings off edges, corners and other holes.",
              "hole measure gland.seat.toml --drilled 5/32 --pin 5/32 --plus-minus \"0.02 mm\""
                  + " \"edge 4-1 over pin 7.11 mm\" \"edge 1-2 over pin 6.63 mm\"")
          .needs(Bench.FILE, "a seat file; - for piped in")
          .needsMany("READING", "such as \"edge 4-1 over pin 7.11 mm\", in quotes")
          .option("--drilled", "SIZE", "the hole as it is: a length or a drill")
          .option("--pin", "SIZE", "the pin in it, for readings over or to a pin")
          .option("--plus-minus", "LENGTH", "how far a reading may be out, 19 times in 20")
          .option("--svg", "FILE", "write a drawing to scale there")
          .option("--save", "FILE", "write the seat file with the measured hole there");

  private final Bench bench;
  private final HoleMeasuring measuring;

  /** Made by the framework. */
  @Activate
  public HoleMeasure(@Reference Bench bench, @Reference HoleMeasuring measuring) {
    this.bench = bench;
    this.measuring = measuring;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    SeatFile file = bench.seat(call, Bench.FILE);
    Seat seat = file.question().seat();
    if (call.option("--drilled").isEmpty()) {
      throw new CommandException(
          "nothing says how large the hole is now; add --drilled, such as --drilled 5/32");
    }
    double drilled = bench.drill(call, "--drilled").diameter().millimetres();
    OptionalDouble pin =
        call.option("--pin").isPresent()
            ? OptionalDouble.of(bench.drill(call, "--pin").diameter().millimetres())
            : OptionalDouble.empty();
    ReadingWords words =
        new ReadingWords(
            seat.outline().corners().stream().map(Outline.Corner::at).toList(),
            call.length("--plus-minus"));
    List<Reading> readings = call.operands("READING").stream().map(words::read).toList();
    MeasuredHole hole =
        measuring.measure(new MeasuringQuestion(readings, drilled, pin, seat.intended()));
    write(call, file, hole);
    return Reply.of(
        hole.agreement() == Agreement.CONTRADICT, text(hole, seat, call.unit()), data(hole, seat));
  }

  private void write(Call call, SeatFile file, MeasuredHole hole) {
    if (call.option("--svg").isPresent()) {
      PaperFile.write(
          call.file("--svg"),
          SvgWriter.write(measuring.draw(hole, call.unit()), WIDTH_MM, HEIGHT_MM));
    }
    if (call.option("--save").isPresent()) {
      SeatFile.Drilled drilled =
          new SeatFile.Drilled(hole.centre(), hole.question().holeDiameterMm(), hole.withinMm());
      SeatFile.Hole placed =
          new SeatFile.Hole(file.hole().method(), file.hole().confidence(), Optional.of(drilled));
      PaperFile.write(
          call.file("--save"),
          bench
              .files()
              .writeSeat(
                  new SeatFile(file.question(), file.stations(), file.head(), placed),
                  call.unit()));
    }
  }

  private static String text(MeasuredHole hole, Seat seat, LengthUnit unit) {
    StringBuilder text =
        new StringBuilder(seat.name())
            .append(": the hole is at ")
            .append(PlaceData.words(hole.centre(), unit))
            .append('\n')
            .append(
                new Columns()
                    .indent(2)
                    .row(
                        "known within", Figures.allowance(hole.withinMm(), unit) + ", radius, 95 %")
                    .row("out from where it should be", out(hole, seat, unit))
                    .row("the readings", agreement(hole.agreement()))
                    .text())
            .append("\nReadings\n")
            .append(readings(hole, unit).text());
    hole.cautions()
        .forEach(caution -> text.append("\n  - ").append(LengthFormat.turned(caution, unit)));
    return text.toString();
  }

  private static String out(MeasuredHole hole, Seat seat, LengthUnit unit) {
    double dx = hole.centre().xMm() - seat.intended().xMm();
    double dy = hole.centre().yMm() - seat.intended().yMm();
    String error = Figures.allowance(Math.hypot(dx, dy), unit) + ", radius";
    return Math.hypot(dx, dy) > 0 ? error + ", towards " + Direction.of(dx, dy) : error;
  }

  private static String agreement(Agreement agreement) {
    return switch (agreement) {
      case UNCHECKED -> "check nothing: a third would";
      case AGREE -> "agree within their uncertainties";
      case CONTRADICT -> "contradict each other";
    };
  }

  private static Columns readings(MeasuredHole hole, LengthUnit unit) {
    Columns columns = new Columns().indent(2).row("from", "to", "read", "+-", "misses by");
    for (MeasuredHole.Misfit misfit : hole.misfits()) {
      Reading reading = misfit.reading();
      columns.row(
          reading.from().name(),
          reading.to().words(),
          LengthFormat.show(Length.ofMillimetres(reading.readingMm()), unit),
          LengthFormat.allowance(Length.ofMillimetres(2 * misfit.standardMm()), unit),
          LengthFormat.allowance(Length.ofMillimetres(misfit.misfitMm()), unit));
    }
    return columns;
  }

  private static Object data(MeasuredHole hole, Seat seat) {
    return Data.of(
        "seat", seat.name(),
        "centre", PlaceData.point(hole.centre()),
        "holeDiameterMm", Data.mm(hole.question().holeDiameterMm()),
        "withinMm", Data.mm(hole.withinMm()),
        "standardUncertaintyXMm", Data.mm(hole.spread().alongXMm()),
        "standardUncertaintyYMm", Data.mm(hole.spread().alongYMm()),
        "intended", PlaceData.point(seat.intended()),
        "errorMm", Data.mm(hole.centre().distanceMm(seat.intended())),
        "agreement", hole.agreement().name().toLowerCase(Locale.ROOT),
        "readings", hole.misfits().stream().map(HoleMeasure::misfit).toList(),
        "other", hole.other().map(PlaceData::point),
        "cautions", hole.cautions());
  }

  private static Object misfit(MeasuredHole.Misfit misfit) {
    Reading reading = misfit.reading();
    return Data.of(
        "from", reading.from().name(),
        "to", reading.to().words(),
        "readingMm", Data.mm(reading.readingMm()),
        "plusMinusMm", Data.mm(reading.plusMinusMm()),
        "standardUncertaintyMm", Data.mm(misfit.standardMm()),
        "misfitMm", Data.mm(misfit.misfitMm()));
  }
}
