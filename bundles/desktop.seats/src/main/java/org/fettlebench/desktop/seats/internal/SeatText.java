package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.kits.SeatFile;

/** Sketches from seat files and back. */
final class SeatText {
  private SeatText() {}

  /** Returns the file of an answered sketch. */
  static SeatFile file(Sketch sketch, SeatAnswer answer, String method) {
    Sketch.Top top = sketch.top();
    SeatFile.Head head =
        top.measured().isPresent()
            ? SeatFile.Head.MEASURED
            : new SeatFile.Head(top.thread(), top.style());
    Stations stations = sketch.shape().stations();
    return new SeatFile(
        answer.question(),
        stations.used() ? stations.stations() : List.of(),
        head,
        new SeatFile.Hole(method, sketch.hole().confidence(), sketch.hole().found()));
  }

  /** Returns the sketch of a file. */
  static Sketch sketch(SeatFile file) {
    SeatQuestion question = file.question();
    Sketch seat = sketch(question.seat());
    SeatedHead head = question.head();
    Sketch.Top top =
        new Sketch.Top(
            file.head().thread(),
            file.head().style(),
            file.head().listed() ? Optional.empty() : Optional.of(measured(head)),
            head.flatsAlongDegrees(),
            head.spanner(),
            head.washer());
    Sketch.Hole hole =
        new Sketch.Hole(
            Optional.of(question.seat().intended()),
            OptionalDouble.of(question.holeDiameterMm()),
            file.hole().method(),
            file.hole().confidence(),
            file.hole().drilled());
    List<Row> rows =
        file.stations().stream()
            .map(each -> Row.ofMillimetres(each.alongMm(), each.nearMm(), each.farMm()))
            .toList();
    Stations stations = new Stations(!rows.isEmpty(), false, rows);
    return seat.with(seat.shape().with(stations)).with(top).with(hole);
  }

  /** Returns the sketch of a seat alone, by its corners. */
  static Sketch sketch(Seat seat) {
    Shape shape =
        new Shape(
            new Stations(false, false, List.of()),
            seat.outline().points(),
            seat.underside().map(Outline::points),
            seat.cavities().stream().map(Outline::points).toList(),
            seat.walls(),
            seat.neighbours(),
            seat.leastMetalMm(),
            bends(seat));
    return Sketch.EMPTY
        .withName(seat.name())
        .with(shape)
        .with(Sketch.EMPTY.hole().at(seat.intended()));
  }

  private static List<Outline> bends(Seat seat) {
    return Stream.of(Stream.of(seat.outline()), seat.underside().stream(), seat.cavities().stream())
        .flatMap(each -> each)
        .filter(Outline::bent)
        .distinct()
        .toList();
  }

  private static Sketch.Measured measured(SeatedHead head) {
    return new Sketch.Measured(
        head.title(),
        head.acrossFlatsMm(),
        OptionalDouble.of(head.sweepDiameterMm()),
        head.heightMm());
  }
}
