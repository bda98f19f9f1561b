package org.fettlebench.desktop.castings.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * A line of the table: a face, bore or boss to be finished, any figure of which may still be
 * missing.
 *
 * @param name as typed; empty until then
 * @param looks what it is
 * @param finished its place on the drawing, or finished diameter
 * @param readings what was measured of the rough one
 * @param centre of a round one on the drawing
 * @param cut its own least cleaning cut; blank when that for all holds
 * @param mayBeOut its own uncertainty; blank when that for all holds
 */
record FaceRow(
    String name,
    Looks looks,
    Entry finished,
    List<Reading> readings,
    Reading centre,
    Entry cut,
    Entry mayBeOut) {
  FaceRow {
    readings = List.copyOf(readings);
  }

  static FaceRow blank(Looks looks) {
    return new FaceRow("", looks, Entry.BLANK, List.of(), Reading.BLANK, Entry.BLANK, Entry.BLANK);
  }

  boolean blank() {
    return equals(blank(looks));
  }

  FaceRow named(String newName) {
    return new FaceRow(newName, looks, finished, readings, centre, cut, mayBeOut);
  }

  FaceRow looking(Looks newLooks) {
    boolean single = readings.size() == 1 && !looks.round() && !newLooks.round();
    // A single size goes along with its face to another axis.
    List<Reading> kept =
        single && onlyAlong()
            ? List.of(Reading.along(newLooks.axis(), readings.get(0).figure(looks.axis())))
            : readings;
    return new FaceRow(name, newLooks, finished, kept, centre, cut, mayBeOut);
  }

  private boolean onlyAlong() {
    Reading first = readings.get(0);
    return first.equals(Reading.along(looks.axis(), first.figure(looks.axis())));
  }

  FaceRow finished(Entry figure) {
    return new FaceRow(name, looks, figure, readings, centre, cut, mayBeOut);
  }

  FaceRow cut(Entry figure) {
    return new FaceRow(name, looks, finished, readings, centre, figure, mayBeOut);
  }

  FaceRow mayBeOut(Entry figure) {
    return new FaceRow(name, looks, finished, readings, centre, cut, figure);
  }

  FaceRow centre(int column, Entry figure) {
    return new FaceRow(name, looks, finished, readings, centre.with(column, figure), cut, mayBeOut);
  }

  /**
   * Returns the same with one figure of a reading changed; readings at the end that are blank go.
   */
  FaceRow reading(int place, int column, Entry figure) {
    List<Reading> changed = new ArrayList<>(readings);
    while (changed.size() <= place) {
      changed.add(Reading.BLANK);
    }
    changed.set(place, changed.get(place).with(column, figure));
    while (!changed.isEmpty() && changed.get(changed.size() - 1).blank()) {
      changed.remove(changed.size() - 1);
    }
    return new FaceRow(name, looks, finished, changed, centre, cut, mayBeOut);
  }

  /** Returns the column of the single size that stands in the table. */
  int measuredColumn() {
    return looks.round() ? Reading.DIAMETER : looks.axis().ordinal();
  }

  /** Returns the single size; blank when several places were measured. */
  Entry measured() {
    return readings.size() == 1 ? readings.get(0).figure(measuredColumn()) : Entry.BLANK;
  }
}
