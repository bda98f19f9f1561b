package org.fettlebench.kits.internal;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.kits.CastingFile;
import org.fettlebench.measure.LengthUnit;

/** Writes a casting file that reads back as the same, to the nanometre. */
final class CastingFileText extends TomlText {
  private CastingFileText(LengthUnit unit) {
    super(unit);
  }

  static String of(CastingFile file, LengthUnit unit) {
    CastingFileText text = new CastingFileText(unit);
    Casting casting = file.casting();
    text.head(file);
    boolean turns = !casting.freedom().turns().isEmpty();
    for (Feature feature : casting.features()) {
      if (feature instanceof FlatFace face) {
        text.face(face, turns);
      }
    }
    for (RoundFace.Kind kind : RoundFace.Kind.values()) {
      for (Feature feature : casting.features()) {
        if (feature instanceof RoundFace round && round.kind() == kind) {
          text.round(round);
        }
      }
    }
    return text.written();
  }

  private void head(CastingFile file) {
    Casting casting = file.casting();
    line("[casting]");
    key("name", quoted(casting.name()));
    key("shift", axes(casting.freedom().shifts()));
    if (!casting.freedom().turns().isEmpty()) {
      key("turn", axes(casting.freedom().turns()));
      key("largest-turn-degrees", number(casting.freedom().mostTurnDegrees()));
    }
    if (file.holdsPressure()) {
      key("holds-pressure", "true");
    }
  }

  private static String axes(Set<Axis> axes) {
    return Arrays.stream(Axis.values())
        .filter(axes::contains)
        .map(axis -> quoted(axis.word()))
        .collect(Collectors.joining(", ", "[", "]"));
  }

  private void face(FlatFace face, boolean turns) {
    line("");
    line("[[face]]");
    key("name", quoted(face.name()));
    key("towards", quoted(face.towards().word()));
    key("finished", length(face.finishedMm()));
    if (!turns && isBare(face)) {
      key("measured", length(face.rough().get(0).alongMm(face.towards().axis())));
    } else {
      line("spots = [");
      face.rough().forEach(spot -> line("  " + spot(spot) + ","));
      line("]");
    }
    taken(face);
  }

  private static boolean isBare(FlatFace face) {
    Spot first = face.rough().get(0);
    return face.rough().size() == 1
        && Arrays.stream(Axis.values())
            .allMatch(axis -> axis == face.towards().axis() || first.alongMm(axis) == 0);
  }

  private void taken(Feature feature) {
    key("cut", length(feature.leastCutMm()));
    key("uncertainty", length(feature.uncertaintyMm()));
  }

  private void round(RoundFace round) {
    line("");
    line("[[" + round.kind().word() + "]]");
    key("name", quoted(round.name()));
    key("along", quoted(round.along().word()));
    key("centre", spot(round.finishedCentre()));
    key("finished", length(round.finishedDiameterMm()));
    line("rough = [");
    for (RoundFace.Rough rough : round.rough()) {
      line(
          "  { centre = %s, diameter = %s },"
              .formatted(spot(rough.centre()), length(rough.diameterMm())));
    }
    line("]");
    taken(round);
  }

  private String spot(Spot spot) {
    return Arrays.stream(Axis.values())
        .map(axis -> length(spot.alongMm(axis)))
        .collect(Collectors.joining(", ", "[", "]"));
  }
}
