package org.fettlebench.kits.internal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanners;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;
import org.fettlebench.threads.ScrewThread;

/** Reads a seat file: one seat, what sits on it, and how its hole will be placed. */
final class SeatFileReader {
  private final Trade trade;
  private final Spanners spanners;
  private final FastenerReader fasteners;

  SeatFileReader(Trade trade, Spanners spanners) {
    this.trade = trade;
    this.spanners = spanners;
    this.fasteners = new FastenerReader(trade);
  }

  /** Returns what the file says; empty when faults were added. */
  Optional<SeatFile> read(Section file) {
    file.required("seat", "Begin the file with a line [seat]");
    Optional<Section> seatSection = file.table("seat");
    seatSection.ifPresent(file.reading()::unit);
    Optional<Seat> seat = seatSection.flatMap(new SeatReader(trade.seats())::read);
    file.required("head", "Say what sits on it under a line [head]");
    Optional<SeatedHead> head = file.table("head").flatMap(this::head);
    file.required("hole", "Say how the hole is placed under a line [hole]");
    Optional<Hole> hole = file.table("hole").flatMap(this::hole);
    file.done();
    if (seat.isEmpty() || head.isEmpty() || hole.isEmpty()) {
      return Optional.empty();
    }
    SeatQuestion question =
        new SeatQuestion(
            seat.get(),
            head.get(),
            hole.get().diameter().millimetres(),
            hole.get().errorMm(),
            hole.get().means());
    return Optional.of(
        new SeatFile(
            question,
            SeatReader.stations(seatSection.orElseThrow()),
            file.table("head").map(this::named).orElse(SeatFile.Head.MEASURED),
            hole.get().placed()));
  }

  private SeatFile.Head named(Section head) {
    return head.has("thread")
        ? new SeatFile.Head(
            fasteners.thread(head).orElseThrow().designation(), fasteners.style(head).orElseThrow())
        : SeatFile.Head.MEASURED;
  }

  /** A hole: how large, how far out it may be expected, why, and how it is placed. */
  private record Hole(Length diameter, double errorMm, String means, SeatFile.Hole placed) {}

  private Optional<Hole> hole(Section hole) {
    Optional<Length> diameter =
        hole.requiredPositive("diameter", "Write the size drilled: diameter = \"4.8 mm\"");
    Optional<String> id = hole.requiredText("method", "Known are " + methodIds());
    Optional<HoleMethod> method = id.flatMap(trade.methods()::find);
    if (id.isPresent() && method.isEmpty()) {
      hole.fault("method", "is no known way of placing a hole", "Known are " + methodIds());
    }
    double confidence = KitReader.confidence(hole).orElse(KitReader.USUAL_CONFIDENCE);
    Optional<SeatFile.Drilled> drilled = drilled(hole);
    hole.done();
    return diameter.isPresent() && method.isPresent()
        ? Optional.of(
            new Hole(
                diameter.get(),
                method.get().errorRadiusMm(confidence),
                Expected.means(method.get(), confidence),
                new SeatFile.Hole(method.get().id(), confidence, drilled)))
        : Optional.empty();
  }

  /** The hole that is there already: all three figures, or none. */
  private static Optional<SeatFile.Drilled> drilled(Section hole) {
    if (!hole.has("drilled-at") && !hole.has("drilled") && !hole.has("drilled-within")) {
      return Optional.empty();
    }
    hole.required("drilled-at", "Write where it is: drilled-at = [\"9 mm\", \"4 mm\"]");
    Optional<Point> centre = Points.point(hole, "drilled-at");
    Optional<Length> diameter =
        hole.requiredPositive("drilled", "Write its size: drilled = \"3.2 mm\"");
    Optional<Length> within = hole.notNegative("drilled-within");
    return centre.isPresent() && diameter.isPresent()
        ? Optional.of(
            new SeatFile.Drilled(
                centre.get(),
                diameter.get().millimetres(),
                within.map(Length::millimetres).orElse(0.0)))
        : Optional.empty();
  }

  private String methodIds() {
    List<HoleMethod> methods = trade.methods().methods();
    return methods.stream().map(HoleMethod::id).collect(Collectors.joining(", "));
  }

  private Optional<SeatedHead> head(Section head) {
    OptionalDouble along = degrees(head);
    Optional<SeatedHead> seated =
        head.has("thread") || head.has("style") ? listed(head, along) : measured(head, along);
    Optional<ScrewThread> thread =
        head.text("thread").flatMap(words -> trade.threads().find(words));
    int before = head.reading().faults().size();
    seated = seated.map(bare -> new HeadParts(trade, spanners, head).on(bare, thread));
    head.done();
    if (head.reading().faults().size() > before) {
      return Optional.empty();
    }
    return seated.filter(each -> canBe(head, each));
  }

  private static boolean canBe(Section head, SeatedHead seated) {
    if (seated.flatsAlongDegrees().isPresent() && seated.acrossFlatsMm().isEmpty()) {
      head.fault(
          "flats-along-degrees",
          "has no meaning for a round head, which has no flats",
          "Leave it out");
      return false;
    }
    if (seated.acrossFlatsMm().orElse(0) > seated.sweepDiameterMm()) {
      head.fault("across-corners", "is less than across-flats", "Check which is which");
      return false;
    }
    return true;
  }

  private static OptionalDouble degrees(Section head) {
    Optional<Double> degrees = head.number("flats-along-degrees", -360, 360);
    return degrees.isPresent() ? OptionalDouble.of(degrees.get()) : OptionalDouble.empty();
  }

  private Optional<SeatedHead> listed(Section head, OptionalDouble along) {
    Optional<ScrewThread> thread = fasteners.thread(head);
    Optional<String> style = fasteners.style(head);
    if (thread.isEmpty() || style.isEmpty()) {
      return Optional.empty();
    }
    Optional<SeatedHead> found =
        trade.heads().find(style.get(), thread.get()).map(each -> Expected.seated(each, along));
    if (found.isEmpty()) {
      head.fault(
          "style",
          "is in no table for " + thread.get().designation(),
          "Measure one and write across-flats or across-corners in place of thread and style");
    }
    return found;
  }

  private static Optional<SeatedHead> measured(Section head, OptionalDouble along) {
    Optional<Length> flats = head.positive("across-flats");
    Optional<Length> corners = head.positive("across-corners");
    Optional<Length> height = head.positive("height");
    boolean said = head.has("across-flats") || head.has("across-corners");
    if (said && flats.isEmpty() && corners.isEmpty()) {
      return Optional.empty();
    }
    if (!said) {
      head.reading()
          .faults()
          .addMissing(
              head.at(),
              "[head] has neither thread and style nor a measured size",
              "Write thread = \"2 BA\" and style = \"hexagon\", or across-flats = \"8.2 mm\","
                  + " or across-corners (the diameter, when round)");
      return Optional.empty();
    }
    double sweep =
        corners
            .map(Length::millimetres)
            .orElseGet(() -> flats.orElseThrow().millimetres() / Math.cos(Math.PI / 6));
    return Optional.of(
        new SeatedHead(
            head.text("title").orElse("head as measured"),
            sweep,
            optional(flats),
            optional(height),
            along,
            ""));
  }

  static OptionalDouble optional(Optional<Length> length) {
    return length.isPresent()
        ? OptionalDouble.of(length.get().millimetres())
        : OptionalDouble.empty();
  }
}
