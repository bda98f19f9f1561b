package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.kits.internal.FaultList.At;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;

/** Reads points: lists of two lengths. */
final class Points {
  private Points() {}

  static Optional<Point> point(Section section, String key) {
    return section.value(key).flatMap(value -> point(section.reading(), section.at(key), value));
  }

  /** Returns the points of a list; empty when it is not there or any of them cannot be read. */
  static Optional<List<Point>> points(Section section, String key) {
    return section
        .value(key)
        .flatMap(value -> points(section.reading(), section.at(key), key, value));
  }

  /** Returns lists of points; those that cannot be read are reported and left out. */
  static List<List<Point>> lists(Section section, String key) {
    List<List<Point>> lists = new ArrayList<>();
    Object value = section.value(key).orElse(null);
    if (value instanceof TomlArray array) {
      for (int i = 0; i < array.size(); i++) {
        points(section.reading(), at(array, i), key, array.get(i)).ifPresent(lists::add);
      }
    } else if (value != null) {
      section.fault(
          key, key + " must be a list of outlines", "Write " + key + " = [[[x, y], ...]]");
    }
    return lists;
  }

  private static Optional<List<Point>> points(Reading reading, At at, String key, Object value) {
    if (!(value instanceof TomlArray array)) {
      reading
          .faults()
          .add(
              at,
              Section.shown(value),
              key + " must be a list of points",
              "Write [[\"0 mm\", \"0 mm\"], [\"9 mm\", \"0 mm\"], ...]");
      return Optional.empty();
    }
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      point(reading, at(array, i), array.get(i)).ifPresent(points::add);
    }
    return points.size() == array.size() && !repeats(reading, array, points)
        ? Optional.of(points)
        : Optional.empty();
  }

  /** Reports every corner that stands where its neighbour stands. */
  private static boolean repeats(Reading reading, TomlArray array, List<Point> points) {
    int before = reading.faults().size();
    for (int i = 0; i < points.size() && points.size() > 1; i++) {
      int last = (i + points.size() - 1) % points.size();
      if (points.get(i).equals(points.get(last))) {
        reading
            .faults()
            .add(
                at(array, i),
                said((TomlArray) array.get(i)),
                "corner " + (i + 1) + " is the same place as corner " + (last + 1),
                "Leave one of the two out");
      }
    }
    return reading.faults().size() > before;
  }

  private static String said(TomlArray pair) {
    return pair.get(0) + ", " + pair.get(1);
  }

  private static Optional<Point> point(Reading reading, At at, Object value) {
    if (!(value instanceof TomlArray pair && pair.size() == 2)) {
      reading
          .faults()
          .add(
              at,
              Section.shown(value),
              "is no point",
              "A point is two lengths, x to the right and y away: [\"9 mm\", \"4 mm\"]");
      return Optional.empty();
    }
    Optional<Length> x = reading.length(at(pair, 0), "x", pair.get(0));
    Optional<Length> y = reading.length(at(pair, 1), "y", pair.get(1));
    return x.isPresent() && y.isPresent()
        ? Optional.of(new Point(x.get().millimetres(), y.get().millimetres()))
        : Optional.empty();
  }

  private static At at(TomlArray array, int index) {
    TomlPosition position = array.inputPositionOf(index);
    return new At(position.line(), position.column());
  }
}
