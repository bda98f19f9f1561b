package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.fettlebench.desktop.seats.internal.Sketch.Hole;
import org.fettlebench.desktop.seats.internal.Sketch.Measured;
import org.fettlebench.desktop.seats.internal.Sketch.Top;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;

/**
 * Work in hand as a text, finished or not, so that closing loses nothing. One thing a line, its
 * parts separated by tabs; figures are millimetres with all their digits. A line that cannot be
 * understood is left out.
 */
final class Draft {
  private Draft() {}

  static String write(Sketch sketch) {
    List<String> lines = new ArrayList<>();
    Shape shape = sketch.shape();
    line(lines, "name", sketch.name());
    line(lines, "stations", shape.stations().used(), shape.stations().oneWidth());
    for (Row row : shape.stations().rows()) {
      line(lines, "row", figure(row.at()), figure(row.near()), figure(row.far()));
    }
    line(lines, "given", points(shape.given()));
    shape.underside().ifPresent(below -> line(lines, "underside", points(below)));
    shape.cavities().forEach(hollow -> line(lines, "cavity", points(hollow)));
    for (Seat.Wall wall : shape.walls()) {
      String ends = points(List.of(wall.from(), wall.to()));
      line(lines, "wall", wall.name(), ends, wall.heightMm(), wall.filletRadiusMm());
    }
    for (Seat.Neighbour head : shape.neighbours()) {
      line(lines, "neighbour", head.name(), points(List.of(head.centre())), head.radiusMm());
    }
    shape.bends().forEach(bent -> line(lines, "bend", bends(bent)));
    line(lines, "metal", shape.leastMetalMm());
    top(lines, sketch.top());
    tools(lines, sketch.top());
    hole(lines, sketch.hole());
    return String.join("\n", lines);
  }

  private static void top(List<String> lines, Top top) {
    line(lines, "head", top.thread(), top.style(), figure(top.flatsAlongDegrees()));
    top.measured()
        .ifPresent(
            head ->
                line(
                    lines,
                    "measured",
                    head.title(),
                    figure(head.acrossFlatsMm()),
                    figure(head.acrossCornersMm()),
                    figure(head.heightMm())));
  }

  private static void tools(List<String> lines, Top top) {
    top.spanner()
        .ifPresent(
            tool ->
                line(
                    lines,
                    "spanner",
                    tool.kind().name(),
                    tool.title(),
                    tool.headDiameterMm(),
                    figure(tool.heightMm()),
                    tool.liftMm(),
                    tool.standing()));
    top.washer()
        .ifPresent(
            under ->
                line(
                    lines,
                    "washer",
                    under.title(),
                    under.diameterMm(),
                    under.thicknessMm(),
                    under.caveat()));
  }

  private static void hole(List<String> lines, Hole hole) {
    line(lines, "hole", figure(hole.diameterMm()), hole.method(), hole.confidence());
    hole.centre().ifPresent(at -> line(lines, "centre", points(List.of(at))));
    hole.found()
        .ifPresent(
            found ->
                line(
                    lines,
                    "found",
                    points(List.of(found.centre())),
                    found.diameterMm(),
                    found.withinMm()));
    DraftPractice.lines(hole.practice()).forEach(parts -> line(lines, parts));
  }

  private static void line(List<String> lines, Object... parts) {
    List<String> plain = new ArrayList<>();
    for (Object part : parts) {
      plain.add(String.valueOf(part).replaceAll("[\\t\\r\\n]", " "));
    }
    lines.add(String.join("\t", plain));
  }

  static String figure(Optional<Length> length) {
    return length.map(each -> String.valueOf(each.nanometres())).orElse("");
  }

  static String figure(OptionalDouble value) {
    return value.isPresent() ? String.valueOf(value.getAsDouble()) : "";
  }

  private static String points(List<Point> points) {
    return points.stream().map(at -> at.xMm() + " " + at.yMm()).collect(Collectors.joining(" "));
  }

  /**
   * Corners of a line with arcs, each as x, y, rounding, and the place on the arc or two dashes.
   */
  private static String bends(Outline outline) {
    return outline.corners().stream()
        .map(
            corner ->
                points(List.of(corner.at()))
                    + " "
                    + corner.roundedMm()
                    + " "
                    + corner.through().map(at -> points(List.of(at))).orElse("- -"))
        .collect(Collectors.joining(" "));
  }

  private static Outline bend(String text) {
    List<Outline.Corner> corners = new ArrayList<>();
    String[] part = text.split(" ");
    for (int i = 0; i + 4 < part.length; i += 5) {
      Optional<Point> through =
          part[i + 3].equals("-")
              ? Optional.empty()
              : Optional.of(new Point(number(part[i + 3]), number(part[i + 4])));
      Point at = new Point(number(part[i]), number(part[i + 1]));
      corners.add(new Outline.Corner(at, number(part[i + 2]), through));
    }
    return Outline.ofCorners(corners);
  }

  static Sketch read(String text) {
    Sketch sketch = Sketch.EMPTY;
    for (String line : text.split("\n")) {
      try {
        sketch = read(sketch, line.split("\t", -1));
      } catch (IllegalArgumentException | IndexOutOfBoundsException unknown) {
        // A draft of an older or newer suite: what is understood is kept.
        continue;
      }
    }
    return sketch;
  }

  private static Sketch read(Sketch sketch, String[] part) {
    Shape shape = sketch.shape();
    Stations stations = shape.stations();
    return switch (part[0]) {
      case "name" -> sketch.withName(part[1]);
      case "stations" ->
          sketch.with(
              shape.with(
                  stations
                      .withUsed(Boolean.parseBoolean(part[1]))
                      .withOneWidth(Boolean.parseBoolean(part[2]))));
      case "row" ->
          sketch.with(
              shape.with(
                  stations.with(
                      Shape.plus(
                          stations.rows(),
                          stations.rows().size(),
                          new Row(length(part[1]), length(part[2]), length(part[3]))))));
      case "given" -> sketch.with(shape.withGiven(ring(part[1])));
      case "underside" -> sketch.with(shape.withUnderside(Optional.of(ring(part[1]))));
      case "cavity" ->
          sketch.with(
              shape.withCavities(
                  Shape.plus(shape.cavities(), shape.cavities().size(), ring(part[1]))));
      case "bend" ->
          sketch.with(
              shape.withBends(Shape.plus(shape.bends(), shape.bends().size(), bend(part[1]))));
      case "metal" -> sketch.with(shape.withLeastMetal(number(part[1])));
      default -> readThings(sketch, part);
    };
  }

  private static Sketch readThings(Sketch sketch, String[] part) {
    Shape shape = sketch.shape();
    Hole hole = sketch.hole();
    return switch (part[0]) {
      case "wall" -> {
        List<Point> ends = ring(part[2]);
        Seat.Wall wall =
            new Seat.Wall(part[1], ends.get(0), ends.get(1), number(part[3]), number(part[4]));
        yield sketch.with(shape.withWalls(Shape.plus(shape.walls(), shape.walls().size(), wall)));
      }
      case "neighbour" -> {
        Seat.Neighbour head = new Seat.Neighbour(part[1], ring(part[2]).get(0), number(part[3]));
        yield sketch.with(
            shape.withNeighbours(Shape.plus(shape.neighbours(), shape.neighbours().size(), head)));
      }
      case "head" -> sketch.with(new Top(part[1], part[2], Optional.empty(), maybe(part[3])));
      case "measured" ->
          sketch.with(
              sketch
                  .top()
                  .asMeasured(
                      new Measured(part[1], maybe(part[2]), maybe(part[3]), maybe(part[4]))));
      case "spanner" ->
          sketch.with(
              sketch
                  .top()
                  .turnedBy(
                      Optional.of(
                          new Spanner(
                              Spanner.Kind.valueOf(part[1]),
                              part[2],
                              number(part[3]),
                              maybe(part[4]),
                              number(part[5]),
                              part[6]))));
      case "washer" ->
          sketch.with(
              sketch
                  .top()
                  .on(
                      Optional.of(
                          new SeatedHead.Washer(
                              part[1], number(part[2]), number(part[3]), part[4]))));
      case "hole" -> sketch.with(hole.sized(maybe(part[1])).by(part[2]).asking(number(part[3])));
      case "centre" -> sketch.with(hole.at(ring(part[1]).get(0)));
      case "found" ->
          sketch.with(
              hole.found(
                  Optional.of(
                      new SeatFile.Drilled(
                          ring(part[1]).get(0), number(part[2]), number(part[3])))));
      default -> sketch.with(hole.with(DraftPractice.read(hole.practice(), part)));
    };
  }

  static Optional<Length> length(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(new Length(Long.parseLong(text)));
  }

  static double number(String text) {
    return Double.parseDouble(text);
  }

  static OptionalDouble maybe(String text) {
    return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(number(text));
  }

  private static List<Point> ring(String text) {
    List<Point> points = new ArrayList<>();
    String[] figures = text.isBlank() ? new String[0] : text.strip().split(" ");
    for (int i = 0; i + 1 < figures.length; i += 2) {
      points.add(new Point(number(figures[i]), number(figures[i + 1])));
    }
    return points;
  }
}
