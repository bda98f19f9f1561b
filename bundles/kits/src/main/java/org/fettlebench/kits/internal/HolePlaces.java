package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Point;
import org.tomlj.TomlArray;

/** Reads the places of holes: a list of points, of which no two are the same. */
final class HolePlaces {
  private HolePlaces() {}

  /** Returns the places; empty when they are not there or one cannot be read. */
  static Optional<List<Point>> read(Section section, String key) {
    Object value = section.value(key).orElse(null);
    if (value == null) {
      return Optional.empty();
    }
    if (!(value instanceof TomlArray array) || array.isEmpty()) {
      section.fault(
          key,
          key + " must be a list of places",
          "Write " + key + " = [[\"0 mm\", \"0 mm\"], [\"9 mm\", \"0 mm\"]]");
      return Optional.empty();
    }
    List<Point> places = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      Points.point(section.reading(), Points.at(array, i), array.get(i)).ifPresent(places::add);
    }
    return places.size() == array.size() && distinct(section, array, places)
        ? Optional.of(places)
        : Optional.empty();
  }

  private static boolean distinct(Section section, TomlArray array, List<Point> places) {
    for (int i = 1; i < places.size(); i++) {
      int first = places.indexOf(places.get(i));
      if (first < i) {
        section
            .reading()
            .faults()
            .add(
                Points.at(array, i),
                "",
                "hole " + (i + 1) + " is in the same place as hole " + (first + 1),
                "Leave one of the two out");
        return false;
      }
    }
    return true;
  }
}
