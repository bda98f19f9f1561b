package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Outline.Corner;
import org.fettlebench.fits.SeatException;
import org.fettlebench.kits.internal.FaultList.At;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/**
 * Reads closed lines: lists of corners, each a point or a table with a rounding or an arc to the
 * next, or a circle.
 */
final class OutlineReader {
  private static final String CORNERS =
      "Write [[\"0 mm\", \"0 mm\"], [\"9 mm\", \"0 mm\"], ...] or { centre, diameter }";

  private final Section section;
  private final String key;

  /** Makes a reader of one key of a table, whose name its faults carry. */
  OutlineReader(Section section, String key) {
    this.section = section;
    this.key = key;
  }

  Optional<Outline> read() {
    return section.value(key).flatMap(value -> read(section.at(key), value));
  }

  /** Returns the lines of a list of them; those that cannot be read are reported and left out. */
  List<Outline> readAll() {
    List<Outline> lines = new ArrayList<>();
    Object value = section.value(key).orElse(null);
    if (value instanceof TomlArray array) {
      for (int i = 0; i < array.size(); i++) {
        read(Points.at(array, i), array.get(i)).ifPresent(lines::add);
      }
    } else if (value != null) {
      section.fault(
          key, key + " must be a list of outlines", "Write " + key + " = [[[x, y], ...]]");
    }
    return lines;
  }

  private Optional<Outline> read(At at, Object value) {
    if (value instanceof TomlTable table) {
      return circle(new Section(table, at, key, section.reading()));
    }
    if (value instanceof TomlArray array) {
      return corners(at, array);
    }
    fault(at, value, key + " must be a list of corners or a circle", CORNERS);
    return Optional.empty();
  }

  private Optional<Outline> circle(Section circle) {
    circle.required("centre", "Write { centre = [\"9 mm\", \"4 mm\"], diameter = \"18 mm\" }");
    Optional<Point> centre = Points.point(circle, "centre");
    Optional<Length> diameter = circle.requiredPositive("diameter", "Write diameter = \"18 mm\"");
    circle.done();
    return centre.isPresent() && diameter.isPresent()
        ? Optional.of(Outline.circle(centre.get(), diameter.get().millimetres() / 2))
        : Optional.empty();
  }

  private Optional<Outline> corners(At at, TomlArray array) {
    int before = section.reading().faults().size();
    List<Bent> bents = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      corner(array, i).ifPresent(bents::add);
    }
    if (section.reading().faults().size() > before || Points.repeats(section, array, at(bents))) {
      return Optional.empty();
    }
    boolean bent = bents.stream().anyMatch(Bent::bends);
    if (bents.size() < (bent ? 2 : 3)) {
      String wrong = "has " + bents.size() + " corners, at least 3 are needed";
      fault(at, Section.shown(array), wrong, "Add the others");
      return Optional.empty();
    }
    try {
      return Optional.of(Outline.ofCorners(joined(bents)));
    } catch (SeatException refused) {
      String[] said = refused.getMessage().split("; ", 2);
      fault(at, key, "cannot be an outline: " + said[0], said.length > 1 ? said[1] : "Correct it");
      return Optional.empty();
    }
  }

  /** A corner as written: its arc may still want the next corner. */
  private record Bent(Corner corner, Optional<Length> radius, boolean bulgesLeft) {
    private boolean bends() {
      return radius.isPresent() || corner.through().isPresent() || corner.roundedMm() > 0;
    }
  }

  private static List<Point> at(List<Bent> bents) {
    return bents.stream().map(bent -> bent.corner().at()).toList();
  }

  private static List<Corner> joined(List<Bent> bents) {
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < bents.size(); i++) {
      Bent bent = bents.get(i);
      Point next = bents.get((i + 1) % bents.size()).corner().at();
      corners.add(bent.radius().isEmpty() ? bent.corner() : arc(bent, next, i));
    }
    return corners;
  }

  private static Corner arc(Bent bent, Point next, int index) {
    try {
      return bent.corner()
          .withThrough(
              Outline.throughOfRadius(
                  bent.corner().at(),
                  next,
                  bent.radius().orElseThrow().millimetres(),
                  bent.bulgesLeft()));
    } catch (SeatException refused) {
      throw new SeatException("corner " + (index + 1) + ": " + refused.getMessage());
    }
  }

  private Optional<Bent> corner(TomlArray array, int index) {
    At at = Points.at(array, index);
    if (!(array.get(index) instanceof TomlTable table)) {
      return Points.point(section.reading(), at, array.get(index))
          .map(point -> new Bent(Corner.sharp(point), Optional.empty(), false));
    }
    String title = "corner " + (index + 1) + " of " + key;
    Section corner = new Section(table, at, title, section.reading());
    corner.required("at", "Write where it is: { at = [\"9 mm\", \"0 mm\"], rounded = \"2 mm\" }");
    Optional<Point> place = Points.point(corner, "at");
    double rounded = corner.positive("rounded").map(Length::millimetres).orElse(0.0);
    Optional<Point> through = Points.point(corner, "through");
    Optional<Length> radius = corner.positive("arc-radius");
    boolean left = radius.isPresent() && bulgesLeft(corner);
    if (through.isPresent() && radius.isPresent()) {
      corner.fault("arc-radius", "is given besides through", "Give one of the two");
    }
    corner.done();
    return place.map(point -> new Bent(new Corner(point, rounded, through), radius, left));
  }

  private static boolean bulgesLeft(Section corner) {
    String remedy =
        "Write bulges = \"left\" or \"right\", as seen going from this corner to the next";
    Optional<String> side = corner.requiredText("bulges", remedy);
    if (side.isPresent() && !side.get().equals("left") && !side.get().equals("right")) {
      corner.fault("bulges", "is neither left nor right", remedy);
    }
    return side.filter("left"::equals).isPresent();
  }

  private void fault(At at, Object value, String wrong, String remedy) {
    section.reading().faults().add(at, Section.shown(value), wrong, remedy);
  }
}
