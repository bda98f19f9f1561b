package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.fettlebench.kits.internal.FaultList.At;
import org.fettlebench.measure.Length;
import org.tomlj.TomlArray;

/** Reads the faces, bores and bosses of a casting file. */
final class CastingFeatureReader {
  private static final String CUT = "Write what must come off for it to clean up: cut = \"0.5 mm\"";
  private static final String UNCERTAINTY =
      "Write how far a reading may be out: uncertainty = \"0.1 mm\"";

  private final CastingFileReader.Head head;

  /** Takes what holds for each that does not say its own. */
  CastingFeatureReader(CastingFileReader.Head head) {
    this.head = head;
  }

  /** Returns the axis that a value names. */
  static Optional<Axis> axis(Object value) {
    return Stream.of(Axis.values()).filter(axis -> axis.word().equals(value)).findFirst();
  }

  /** Returns a flat face; empty when faults were added. */
  Optional<Feature> face(Section section) {
    int before = section.reading().faults().size();
    String name = name(section);
    section.required("towards", "Write which way it looks, out of the metal: towards = \"up\"");
    Optional<Towards> towards = towards(section);
    section.required("finished", "Write where it lies on the drawing: finished = \"25 mm\"");
    Optional<Length> finished = section.length("finished");
    Optional<Length> cut = said(section, "cut", head.cut(), CUT);
    Optional<Length> uncertainty = said(section, "uncertainty", head.uncertainty(), UNCERTAINTY);
    List<Spot> rough = rough(section, towards);
    section.done();
    return section.reading().faults().size() > before || finished.isEmpty() || cut.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new FlatFace(
                name,
                towards.orElseThrow(),
                finished.get().millimetres(),
                cut.get().millimetres(),
                rough,
                uncertainty.orElseThrow().millimetres()));
  }

  private static Optional<Towards> towards(Section section) {
    Optional<String> word = section.text("towards");
    Optional<Towards> towards =
        word.flatMap(
            said -> Stream.of(Towards.values()).filter(one -> one.word().equals(said)).findFirst());
    if (word.isPresent() && towards.isEmpty()) {
      String known =
          Stream.of(Towards.values()).map(Towards::word).collect(Collectors.joining(", "));
      section.fault("towards", "is no way to look", "Write one of " + known);
    }
    return towards;
  }

  private List<Spot> rough(Section section, Optional<Towards> towards) {
    boolean one = section.has("measured");
    if (one && section.has("spots")) {
      section.fault("measured", "stands beside spots", "Leave one of the two out");
      return List.of();
    }
    if (one && !head.turns().isEmpty()) {
      section.fault(
          "measured",
          "does not say where on the face, which a turn needs",
          "Write spots near its corners: spots = [[\"0 mm\", \"0 mm\", \"25 mm\"], ...]");
      return List.of();
    }
    if (one) {
      Optional<Length> measured = section.length("measured");
      return measured.isPresent() && towards.isPresent()
          ? List.of(on(towards.get().axis(), measured.get().millimetres()))
          : List.of();
    }
    section.required(
        "spots",
        "Write what was measured: measured = \"26.2 mm\", or spots near its corners:"
            + " spots = [[\"0 mm\", \"0 mm\", \"26.2 mm\"], ...]");
    return spots(section);
  }

  private static Spot on(Axis axis, double along) {
    return new Spot(
        axis == Axis.X ? along : 0, axis == Axis.Y ? along : 0, axis == Axis.Z ? along : 0);
  }

  private static List<Spot> spots(Section section) {
    Optional<Object> value = section.value("spots");
    if (value.isPresent() && !(value.get() instanceof TomlArray)) {
      section.fault(
          "spots", "is no list of spots", "Write spots = [[\"0 mm\", \"0 mm\", \"25 mm\"]]");
    }
    if (!(value.orElse(null) instanceof TomlArray array)) {
      return List.of();
    }
    if (array.isEmpty()) {
      section.fault("spots", "has no spot", "Measure the face near its corners");
    }
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      spot(section, Points.at(array, i), array.get(i), Optional.empty()).ifPresent(spots::add);
    }
    return spots;
  }

  /** Returns a bore or boss; empty when faults were added. */
  Optional<Feature> round(Section section, RoundFace.Kind kind) {
    int before = section.reading().faults().size();
    String name = name(section);
    Optional<Axis> along =
        section
            .required("along", "Write which way its axis runs: along = \"z\"")
            .flatMap(CastingFeatureReader::axis);
    if (section.has("along") && along.isEmpty()) {
      section.fault("along", "is no axis", "Write \"x\", \"y\" or \"z\"");
    }
    Optional<Spot> centre =
        section
            .required(
                "centre", "Write where its axis lies on the drawing: centre = [\"9 mm\", \"4 mm\"]")
            .flatMap(value -> spot(section, section.at("centre"), value, along));
    Optional<Length> finished =
        section.requiredPositive("finished", "Write its finished diameter: finished = \"12 mm\"");
    Optional<Length> cut = said(section, "cut", head.cut(), CUT);
    Optional<Length> uncertainty = said(section, "uncertainty", head.uncertainty(), UNCERTAINTY);
    List<RoundFace.Rough> rough = roughs(section, along);
    section.done();
    return section.reading().faults().size() > before
        ? Optional.empty()
        : Optional.of(
            new RoundFace(
                name,
                kind,
                along.orElseThrow(),
                centre.orElseThrow(),
                finished.orElseThrow().millimetres(),
                cut.orElseThrow().millimetres(),
                rough,
                uncertainty.orElseThrow().millimetres()));
  }

  private static List<RoundFace.Rough> roughs(Section section, Optional<Axis> along) {
    List<RoundFace.Rough> roughs = new ArrayList<>();
    section.required(
        "rough",
        "Write what was measured: rough = [{ centre = [\"9.2 mm\", \"4 mm\"], diameter = \"10 mm\" }]");
    List<Section> each = section.tables("rough");
    if (each.isEmpty() && section.value("rough").orElse(null) instanceof TomlArray) {
      section.fault("rough", "has no place", "Measure its centre and diameter");
    }
    for (Section one : each) {
      Optional<Spot> centre =
          one.required("centre", "Write the centre of the rough one")
              .flatMap(value -> spot(one, one.at("centre"), value, along));
      one.required("diameter", "Write its diameter; \"0 mm\" for a bore that is not cored");
      Optional<Length> diameter = one.notNegative("diameter");
      one.done();
      if (centre.isPresent() && diameter.isPresent()) {
        roughs.add(new RoundFace.Rough(centre.get(), diameter.get().millimetres()));
      }
    }
    return roughs;
  }

  private static String name(Section section) {
    return section.requiredName("name", "Write what it is called: name = \"foot\"").orElse("");
  }

  private static Optional<Length> said(
      Section section, String key, Optional<Length> forAll, String remedy) {
    if (forAll.isEmpty()) {
      section.required(key, remedy + ", here or once under [casting]");
    }
    Optional<Length> own = section.notNegative(key);
    return own.isPresent() ? own : forAll;
  }

  /**
   * Returns a spot; of a round thing two lengths will do, the axis along which it runs left out.
   */
  private static Optional<Spot> spot(Section section, At at, Object value, Optional<Axis> along) {
    boolean two = value instanceof TomlArray pair && pair.size() == 2 && along.isPresent();
    if (!(value instanceof TomlArray array && (two || array.size() == 3))) {
      section
          .reading()
          .faults()
          .add(
              at,
              Section.shown(value),
              "is no spot",
              "A spot is three lengths, x to the right, y away, z up:"
                  + " [\"9 mm\", \"4 mm\", \"25 mm\"]"
                  + (along.isPresent() ? "; or the two across the axis" : ""));
      return Optional.empty();
    }
    double[] figures = new double[3];
    boolean whole = true;
    int next = 0;
    for (Axis axis : Axis.values()) {
      if (two && along.get() == axis) {
        continue;
      }
      Optional<Length> length =
          section.reading().length(Points.at(array, next), axis.word(), array.get(next));
      figures[axis.ordinal()] = length.map(Length::millimetres).orElse(0.0);
      whole &= length.isPresent();
      next++;
    }
    return whole ? Optional.of(new Spot(figures[0], figures[1], figures[2])) : Optional.empty();
  }
}
