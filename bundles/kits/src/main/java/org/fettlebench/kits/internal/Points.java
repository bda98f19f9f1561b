package org.fettlebench.kits.internal;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
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

  /** Reports every corner that stands where its neighbour stands. */
  static boolean repeats(Section section, TomlArray array, List<Point> points) {
    Reading reading = section.reading();
    int before = reading.faults().size();
    for (int i = 0; i < points.size() && points.size() > 1; i++) {
      int last = (i + points.size() - 1) % points.size();
      if (points.get(i).equals(points.get(last))) {
        reading
            .faults()
            .add(
                at(array, i),
                said(array.get(i)),
                "corner " + (i + 1) + " is the same place as corner " + (last + 1),
                "Leave one of the two out");
      }
    }
    return reading.faults().size() > before;
  }

  private static String said(Object value) {
    return value instanceof TomlArray list && !list.isEmpty()
        ? list.toList().stream().map(Section::shown).collect(Collectors.joining(", "))
        : Section.shown(value);
  }

  private static String figures(int count) {
    return ": it has " + count + (count == 1 ? " figure" : " figures");
  }

  static Optional<Point> point(Reading reading, At at, Object value) {
    if (!(value instanceof TomlArray pair && pair.size() == 2)) {
      reading
          .faults()
          .add(
              at,
              said(value),
              "is no point" + (value instanceof TomlArray list ? figures(list.size()) : ""),
              "A point is two lengths, x to the right and y away: [\"9 mm\", \"4 mm\"]");
      return Optional.empty();
    }
    Optional<Length> x = reading.length(at(pair, 0), "x", pair.get(0));
    Optional<Length> y = reading.length(at(pair, 1), "y", pair.get(1));
    return x.isPresent() && y.isPresent()
        ? Optional.of(new Point(x.get().millimetres(), y.get().millimetres()))
        : Optional.empty();
  }

  static At at(TomlArray array, int index) {
    TomlPosition position = array.inputPositionOf(index);
    return new At(position.line(), position.column());
  }
}
