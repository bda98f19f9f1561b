package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.CastingException;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.Freedom;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.kits.CastingFile;
import org.fettlebench.measure.Length;
import org.tomlj.TomlArray;

/** Reads a casting file: what was measured of the rough casting, and what is to be finished. */
final class CastingFileReader {
  // Only the limit of a turn that may not be made.
  private static final double NO_TURN_DEGREES = 1;

  /** Returns what the file says; empty when faults were added. */
  Optional<CastingFile> read(Section file) {
    int before = file.reading().faults().size();
    file.required("casting", "Begin the file with a line [casting]");
    Optional<Section> section = file.table("casting");
    section.ifPresent(file.reading()::unit);
    Optional<Head> head = section.map(CastingFileReader::head);
    List<Feature> features = head.map(each -> features(file, each)).orElse(List.of());
    file.done();
    if (file.reading().faults().size() > before || head.isEmpty()) {
      return Optional.empty();
    }
    return casting(file, head.get(), features);
  }

  /**
   * What stands under [casting].
   *
   * @param shifts empty when the file does not say along what it may be shifted
   */
  record Head(
      String name,
      Optional<Length> cut,
      Optional<Length> uncertainty,
      Optional<Set<Axis>> shifts,
      Set<Axis> turns,
      double mostTurnDegrees,
      boolean holdsPressure) {}

  private static Head head(Section section) {
    String name =
        section
            .requiredName("name", "Write what the trade calls it: name = \"slide valve\"")
            .orElse("");
    Optional<Set<Axis>> turns = axes(section, "turn");
    boolean turning = turns.filter(some -> !some.isEmpty()).isPresent();
    if (turning) {
      section.required(
          "largest-turn-degrees", "Write how far it may turn: largest-turn-degrees = 2");
    }
    Head head =
        new Head(
            name,
            forAll(section, "cut"),
            forAll(section, "uncertainty"),
            axes(section, "shift"),
            turns.orElse(Set.of()),
            section.number("largest-turn-degrees", 0, 10).orElse(NO_TURN_DEGREES),
            section.flag("holds-pressure").orElse(false));
    section.done();
    return head;
  }

  /** A faulty figure stands for any other, so that its faces are not said to lack one. */
  private static Optional<Length> forAll(Section section, String key) {
    return section
        .notNegative(key)
        .or(() -> section.has(key) ? Optional.of(Length.ofNanometres(0)) : Optional.empty());
  }

  private static Optional<Set<Axis>> axes(Section section, String key) {
    Optional<Object> value = section.value(key);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    Set<Axis> axes = EnumSet.noneOf(Axis.class);
    List<Object> said =
        value.get() instanceof TomlArray array ? array.toList() : value.stream().toList();
    for (Object each : said) {
      Optional<Axis> axis = CastingFeatureReader.axis(each);
      axis.ifPresent(axes::add);
      if (axis.isEmpty()) {
        section.fault(
            key,
            key + " has " + Section.shown(each) + ", which is no axis",
            "Write a list of \"x\", \"y\" and \"z\": " + key + " = [\"x\", \"z\"]");
      }
    }
    return Optional.of(axes);
  }

  private static List<Feature> features(Section file, Head head) {
    CastingFeatureReader reader = new CastingFeatureReader(head);
    List<Section> faces = file.tables("face");
    List<Section> bores = file.tables("bore");
    List<Section> bosses = file.tables("boss");
    if (faces.isEmpty() && bores.isEmpty() && bosses.isEmpty()) {
      file.reading()
          .faults()
          .addMissing(
              file.at(),
              "the file has no [[face]], [[bore]] or [[boss]]",
              "Write what is finished");
    }
    repeated(Stream.of(faces, bores, bosses).flatMap(List::stream).toList());
    List<Feature> features = new ArrayList<>();
    faces.forEach(each -> reader.face(each).ifPresent(features::add));
    bores.forEach(each -> reader.round(each, RoundFace.Kind.BORE).ifPresent(features::add));
    bosses.forEach(each -> reader.round(each, RoundFace.Kind.BOSS).ifPresent(features::add));
    return features;
  }

  private static void repeated(List<Section> all) {
    Set<String> names = new HashSet<>();
    for (Section each : all) {
      Optional<Object> name = each.value("name");
      if (name.filter(String.class::isInstance)
          .map(String.class::cast)
          .map(String::strip)
          .filter(known -> !names.add(known))
          .isPresent()) {
        each.fault("name", "is the name of another one already", "Give each a name of its own");
      }
    }
  }

  private static Optional<CastingFile> casting(Section file, Head head, List<Feature> features) {
    try {
      Set<Axis> shifts = head.shifts().orElseGet(() -> Freedom.held(features));
      if (head.shifts().isEmpty() && head.turns().isEmpty() && shifts.isEmpty()) {
        throw new CastingException(
            "no two faces look opposite ways, so nothing holds the part along any axis; "
                + "Give the face opposite, towards = \"down\" to one towards = \"up\"");
      }
      Freedom freedom = new Freedom(shifts, head.turns(), head.mostTurnDegrees());
      return Optional.of(
          new CastingFile(new Casting(head.name(), features, freedom), head.holdsPressure()));
    } catch (CastingException refused) {
      String[] said = refused.getMessage().split("; ", 2);
      file.reading()
          .faults()
          .addMissing(file.at("casting"), said[0], said.length > 1 ? said[1] : "Check the file");
      return Optional.empty();
    }
  }
}
