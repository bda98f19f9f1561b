package org.fettlebench.desktop.castings.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.fettlebench.castings.Axis;

/**
 * All that is on the page, finished or not; immutable.
 *
 * @param name of the casting
 * @param rows faces, bores and bosses
 * @param cut least cleaning cut of all that do not say their own
 * @param mayBeOut uncertainty of all that do not say their own
 * @param moves how the finished part may be moved
 * @param holdsPressure whether it holds steam or pressure
 */
record Sketch(
    String name,
    List<FaceRow> rows,
    Entry cut,
    Entry mayBeOut,
    Moves moves,
    boolean holdsPressure) {

  /**
   * How the finished part may be moved.
   *
   * @param shifts axes that a person chose; empty for those along which it is held
   * @param turns axes about which it may be turned
   * @param largestTurn degrees, as typed
   */
  record Moves(Optional<Set<Axis>> shifts, Set<Axis> turns, String largestTurn) {
    static final Moves USUAL = new Moves(Optional.empty(), Set.of(), "");

    Moves {
      shifts = shifts.map(Set::copyOf);
      turns = Set.copyOf(turns);
    }

    Moves shifting(Set<Axis> axes) {
      return new Moves(Optional.of(axes), turns, largestTurn);
    }

    Moves turning(Axis axis, boolean may) {
      Set<Axis> axes = new HashSet<>(turns);
      if (may) {
        axes.add(axis);
      } else {
        axes.remove(axis);
      }
      return new Moves(shifts, axes, largestTurn);
    }

    Moves upTo(String degrees) {
      return new Moves(shifts, turns, degrees);
    }
  }

  static final Sketch EMPTY =
      new Sketch("", List.of(), Entry.BLANK, Entry.BLANK, Moves.USUAL, false);

  Sketch {
    rows = List.copyOf(rows);
  }

  Sketch named(String newName) {
    return new Sketch(newName, rows, cut, mayBeOut, moves, holdsPressure);
  }

  Sketch rows(List<FaceRow> newRows) {
    return new Sketch(name, newRows, cut, mayBeOut, moves, holdsPressure);
  }

  Sketch cut(Entry figure) {
    return new Sketch(name, rows, figure, mayBeOut, moves, holdsPressure);
  }

  Sketch mayBeOut(Entry figure) {
    return new Sketch(name, rows, cut, figure, moves, holdsPressure);
  }

  Sketch moves(Moves newMoves) {
    return new Sketch(name, rows, cut, mayBeOut, newMoves, holdsPressure);
  }

  Sketch holdsPressure(boolean now) {
    return new Sketch(name, rows, cut, mayBeOut, moves, now);
  }

  /** Returns the row, or the blank one that follows the last. */
  FaceRow row(int index) {
    return index < rows.size() ? rows.get(index) : FaceRow.blank(next(index));
  }

  /** Faces are measured in pairs, so the one opposite is offered after each. */
  private Looks next(int index) {
    if (rows.isEmpty() || index > rows.size()) {
      return Looks.LEFT;
    }
    Looks last = rows.get(rows.size() - 1).looks();
    return last.round() ? last : Looks.values()[(last.ordinal() + 1) % 6];
  }

  /** Returns the same with one row changed, which may be the blank one after the last. */
  Sketch row(int index, UnaryOperator<FaceRow> change) {
    List<FaceRow> changed = new ArrayList<>(rows);
    while (changed.size() <= index) {
      changed.add(row(changed.size()));
    }
    changed.set(index, change.apply(changed.get(index)));
    return rows(changed);
  }

  Sketch without(int index) {
    List<FaceRow> fewer = new ArrayList<>(rows);
    fewer.remove(index);
    return rows(fewer);
  }

  /** Returns what each row is called: as typed, else after what it is, each once. */
  List<String> names() {
    Set<String> taken = new HashSet<>();
    rows.forEach(row -> taken.add(row.name().strip()));
    List<String> names = new ArrayList<>();
    for (FaceRow row : rows) {
      String name = row.name().strip();
      String plain = row.looks().called();
      for (int next = 1; name.isEmpty(); next++) {
        String free = next == 1 ? plain : plain + " " + next;
        name = taken.add(free) ? free : "";
      }
      names.add(name);
    }
    return names;
  }
}
