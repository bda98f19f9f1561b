package org.fettlebench.desktop.castings.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Freedom;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.kits.CastingFile;

/** Sketches out of casting files. */
final class CastingText {
  private CastingText() {}

  /** Returns the sketch of a file; what most faces have in common stands once for all. */
  static Sketch sketch(CastingFile file) {
    Casting casting = file.casting();
    Freedom freedom = casting.freedom();
    double cut = usual(casting, Feature::leastCutMm);
    double mayBeOut = usual(casting, Feature::uncertaintyMm);
    boolean turns = !freedom.turns().isEmpty();
    List<FaceRow> rows = new ArrayList<>();
    for (Feature feature : casting.features()) {
      FaceRow row = row(feature, turns);
      rows.add(
          row.cut(own(feature.leastCutMm(), cut)).mayBeOut(own(feature.uncertaintyMm(), mayBeOut)));
    }
    Optional<Set<Axis>> shifts =
        freedom.shifts().equals(Freedom.held(casting.features()))
            ? Optional.empty()
            : Optional.of(freedom.shifts());
    String largest = turns ? degrees(freedom.mostTurnDegrees()) : "";
    return new Sketch(
        casting.name(),
        rows,
        Entry.ofMillimetres(cut),
        Entry.ofMillimetres(mayBeOut),
        new Sketch.Moves(shifts, freedom.turns(), largest),
        file.holdsPressure());
  }

  private static String degrees(double degrees) {
    return degrees == Math.rint(degrees) ? String.valueOf((long) degrees) : String.valueOf(degrees);
  }

  private static Entry own(double figure, double forAll) {
    return figure == forAll ? Entry.BLANK : Entry.ofMillimetres(figure);
  }

  private static double usual(Casting casting, ToDoubleFunction<Feature> figure) {
    Map<Double, Long> counted =
        casting.features().stream()
            .map(figure::applyAsDouble)
            .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    return counted.entrySet().stream()
        .max(
            Map.Entry.<Double, Long>comparingByValue()
                .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
        .orElseThrow()
        .getKey();
  }

  private static FaceRow row(Feature feature, boolean turns) {
    FaceRow row = FaceRow.blank(Looks.of(feature)).named(feature.name());
    return feature instanceof FlatFace flat
        ? flat(row.finished(Entry.ofMillimetres(flat.finishedMm())), flat, turns)
        : round(row, (RoundFace) feature);
  }

  private static FaceRow flat(FaceRow row, FlatFace face, boolean turns) {
    Axis axis = face.towards().axis();
    Spot first = face.rough().get(0);
    boolean bare = face.rough().size() == 1 && !turns && first.equals(on(axis, first));
    FaceRow read = row;
    for (int i = 0; i < face.rough().size(); i++) {
      Reading whole = Reading.of(face.rough().get(i));
      for (Axis each : Axis.values()) {
        if (!bare || each == axis) {
          read = read.reading(i, each.ordinal(), whole.figure(each));
        }
      }
    }
    return read;
  }

  private static Spot on(Axis axis, Spot spot) {
    double along = spot.alongMm(axis);
    return new Spot(
        axis == Axis.X ? along : 0, axis == Axis.Y ? along : 0, axis == Axis.Z ? along : 0);
  }

  private static FaceRow round(FaceRow row, RoundFace face) {
    FaceRow read = row.finished(Entry.ofMillimetres(face.finishedDiameterMm()));
    Reading centre = Reading.of(face.finishedCentre());
    for (Axis each : Axis.values()) {
      read = read.centre(each.ordinal(), centre.figure(each));
    }
    for (int i = 0; i < face.rough().size(); i++) {
      Reading whole = Reading.of(face.rough().get(i).centre());
      for (Axis each : Axis.values()) {
        read = read.reading(i, each.ordinal(), whole.figure(each));
      }
      Entry diameter = Entry.ofMillimetres(face.rough().get(i).diameterMm());
      read = read.reading(i, Reading.DIAMETER, diameter);
    }
    return read;
  }
}
