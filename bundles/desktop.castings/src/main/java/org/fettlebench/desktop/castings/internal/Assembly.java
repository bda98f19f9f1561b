package org.fettlebench.desktop.castings.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.CastingException;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Freedom;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;

/** Makes a casting out of what is on the page, and says what is missing or wrong first. */
final class Assembly {
  /** Only the limit of a turn that may not be made. */
  private static final double NO_TURN_DEGREES = 1;

  private final Sketch sketch;
  private final List<Feature> features = new ArrayList<>();
  private final List<Integer> rows = new ArrayList<>();
  private String missing = "";
  private String wrong = "";
  private Optional<Casting> casting = Optional.empty();

  Assembly(Sketch sketch) {
    this.sketch = sketch;
    List<String> names = sketch.names();
    usable("Least cut of all", sketch.cut());
    usable("May be out, of all", sketch.mayBeOut());
    for (int i = 0; i < sketch.rows().size(); i++) {
      if (!sketch.rows().get(i).blank()) {
        add(i, names.get(i));
      }
    }
    if (features.isEmpty()) {
      missing(
          "Type the first face: which way it looks, its size on the drawing, what you measured.");
    } else {
      put();
    }
  }

  /** Returns the casting of all that is whole; empty when there is none. */
  Optional<Casting> casting() {
    return casting;
  }

  /** Returns the row of each feature. */
  List<Integer> rows() {
    return rows;
  }

  /** Returns what is wrong, else what is missing; empty when nothing is. */
  String next() {
    return wrong.isEmpty() ? missing : wrong;
  }

  boolean isWrong() {
    return !wrong.isEmpty();
  }

  private void missing(String words) {
    missing = missing.isEmpty() ? words : missing;
  }

  private void wrong(String words) {
    wrong = wrong.isEmpty() ? words : wrong;
  }

  private boolean usable(String what, Entry figure) {
    if (figure.wrong()) {
      wrong(what + ": " + figure.trouble() + ".");
    }
    return !figure.wrong();
  }

  private boolean needed(String what, Entry figure, String remedy) {
    if (figure.blank()) {
      missing(what + " is missing; " + remedy + ".");
    }
    return usable(what, figure) && figure.length().isPresent();
  }

  private void add(int index, String name) {
    FaceRow row = sketch.rows().get(index);
    Entry cut = row.cut().blank() ? sketch.cut() : row.cut();
    Entry mayBeOut = row.mayBeOut().blank() ? sketch.mayBeOut() : row.mayBeOut();
    boolean whole =
        needed(
                name + ", on the drawing",
                row.finished(),
                row.looks().round()
                    ? "type the finished diameter"
                    : "type where the finished face lies along " + row.looks().axis().word())
            & read(row, name)
            & needed(name + ", least cut", cut, "type it here or once for all, above the table")
            & needed(
                name + ", may be out", mayBeOut, "type it here or once for all, above the table");
    if (whole) {
      try {
        features.add(feature(row, name, cut, mayBeOut));
        rows.add(index);
      } catch (CastingException refused) {
        wrong(refused.getMessage() + ".");
      }
    }
  }

  private boolean read(FaceRow row, String name) {
    if (row.readings().isEmpty()) {
      missing(
          row.looks().round()
              ? name + ", measured, is missing; type the rough diameter, 0 if it is not cored."
              : name + ", measured, is missing; type where the rough face lies.");
      return false;
    }
    boolean whole = !row.looks().round() || centred(row, name);
    for (int i = 0; i < row.readings().size(); i++) {
      whole &= read(row, name, i);
    }
    return whole;
  }

  private boolean centred(FaceRow row, String name) {
    boolean whole = true;
    for (Axis axis : Axis.values()) {
      whole &=
          axis == row.looks().axis()
              ? usable(name + ", centre " + axis.word(), row.centre().figure(axis))
              : needed(
                  name + ", centre " + axis.word() + " on the drawing",
                  row.centre().figure(axis),
                  "type it beside the table");
    }
    return whole;
  }

  private boolean read(FaceRow row, String name, int place) {
    Reading reading = row.readings().get(place);
    Looks looks = row.looks();
    String where =
        name + (row.readings().size() == 1 ? ", measured" : ", place " + (place + 1) + " measured");
    boolean whole = true;
    for (Axis axis : Axis.values()) {
      boolean must =
          looks.round()
              ? axis != looks.axis() || row.readings().size() > 1
              : axis == looks.axis() || !sketch.moves().turns().isEmpty();
      Entry figure = reading.figure(axis);
      String what = where + " " + axis.word();
      whole &= must ? needed(what, figure, remedy(looks, axis)) : usable(what, figure);
    }
    return looks.round()
        ? whole
            & needed(
                where + " diameter", reading.diameter(), "type it, 0 for a bore that is not cored")
        : whole;
  }

  private String remedy(Looks looks, Axis axis) {
    return !looks.round() && axis != looks.axis()
        ? "a turn needs to know where on the face: type it beside the table"
        : "type it beside the table";
  }

  private Feature feature(FaceRow row, String name, Entry cut, Entry mayBeOut) {
    Looks looks = row.looks();
    return looks.round()
        ? new RoundFace(
            name,
            looks.kind().orElseThrow(),
            looks.axis(),
            row.centre().spot(),
            row.finished().millimetres(),
            cut.millimetres(),
            row.readings().stream()
                .map(each -> new RoundFace.Rough(each.spot(), each.diameter().millimetres()))
                .toList(),
            mayBeOut.millimetres())
        : new FlatFace(
            name,
            looks.towards().orElseThrow(),
            row.finished().millimetres(),
            cut.millimetres(),
            spots(row),
            mayBeOut.millimetres());
  }

  private static List<Spot> spots(FaceRow row) {
    return row.readings().stream().map(Reading::spot).toList();
  }

  private void put() {
    Sketch.Moves moves = sketch.moves();
    Set<Axis> shifts = moves.shifts().orElseGet(() -> Freedom.held(features));
    if (shifts.isEmpty() && moves.turns().isEmpty()) {
      missing(
          moves.shifts().isPresent()
              ? "Nothing may be moved; tick an axis along which the part may be shifted."
              : "Give the face opposite too: the part is held from one side only.");
      return;
    }
    Optional<Double> largest = largestTurn(moves);
    if (largest.isEmpty()) {
      return;
    }
    try {
      String name = sketch.name().isBlank() ? "casting" : sketch.name().strip();
      casting =
          Optional.of(
              new Casting(name, features, new Freedom(shifts, moves.turns(), largest.get())));
    } catch (CastingException refused) {
      wrong(refused.getMessage() + ".");
    }
  }

  private Optional<Double> largestTurn(Sketch.Moves moves) {
    if (moves.turns().isEmpty()) {
      return Optional.of(NO_TURN_DEGREES);
    }
    String typed = moves.largestTurn().strip().replace(',', '.');
    if (typed.isEmpty()) {
      missing("The largest turn is missing; type it in degrees, above 0 to 10.");
      return Optional.empty();
    }
    try {
      return Optional.of(Double.parseDouble(typed));
    } catch (NumberFormatException refused) {
      wrong("Largest turn: '" + typed + "' is no number; type degrees, above 0 to 10.");
      return Optional.empty();
    }
  }
}
