package org.fettlebench.castings.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.CastingException;
import org.fettlebench.castings.Castings;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.osgi.service.component.annotations.Component;

/** Places a finished part and says what comes of it. */
@Component
public final class CastingPlacer implements Castings {

  @Override
  public Placing place(Casting casting) {
    casting.freedom().shifts().stream().sorted().forEach(axis -> checkHeld(casting, axis));
    Placer.Placed placed = new Placer(casting).place();
    List<Placing.Coming> coming = coming(casting, placed);
    return new Placing(
        casting,
        spot(placed.pose().datum()),
        spot(placed.pose().turned().scalarMultiply(180 / Math.PI)),
        placed.spareMm(),
        coming,
        Placing.cleansUp(placed.spareMm())
            ? List.of()
            : givings(casting, coming, -placed.spareMm()),
        settingOut(coming));
  }

  /** Refuses a shift along which the part could be pushed out of the casting for ever. */
  private static void checkHeld(Casting casting, Axis axis) {
    boolean round =
        casting.features().stream()
            .anyMatch(one -> one instanceof RoundFace face && face.along() != axis);
    List<FlatFace> along = flats(casting.features(), axis);
    if (round || along.stream().map(FlatFace::towards).distinct().count() == 2) {
      return;
    }
    String who =
        along.isEmpty()
            ? "no face holds the part"
            : "only \"" + along.get(0).name() + "\" holds the part";
    throw new CastingException(
        "along %s %s; give the face opposite, or leave %s out of what may be shifted"
            .formatted(axis.word(), who, axis.word()));
  }

  private static List<FlatFace> flats(List<? extends Feature> features, Axis axis) {
    return features.stream()
        .filter(FlatFace.class::isInstance)
        .map(FlatFace.class::cast)
        .filter(face -> face.towards().axis() == axis)
        .toList();
  }

  private static Spot spot(Vector3D vector) {
    return new Spot(vector.getX(), vector.getY(), vector.getZ());
  }

  private static List<Placing.Coming> coming(Casting casting, Placer.Placed placed) {
    List<Placing.Coming> coming = new ArrayList<>();
    for (int i = 0; i < casting.features().size(); i++) {
      Feature feature = casting.features().get(i);
      Skin skin = Skin.of(feature);
      coming.add(
          new Placing.Coming(
              feature,
              skin.comesOffMm(placed.pose()),
              skin.spareMm(placed.pose()),
              placed.governing().contains(i)));
    }
    return coming;
  }

  /** Only what governs can help by giving: more room elsewhere would not be used. */
  private static List<Placing.Giving> givings(
      Casting casting, List<Placing.Coming> coming, double shortMm) {
    return coming.stream()
        .filter(Placing.Coming::governs)
        .flatMap(one -> new Giver(casting, one.feature(), shortMm).giving().stream())
        .sorted(Comparator.comparingDouble(Placing.Giving::byMm))
        .toList();
  }

  private static List<Placing.SettingOut> settingOut(List<Placing.Coming> coming) {
    List<Placing.SettingOut> all = new ArrayList<>();
    for (Axis axis : Axis.values()) {
      Optional<Placing.Coming> from =
          coming.stream()
              .filter(
                  one -> one.feature() instanceof FlatFace face && face.towards().axis() == axis)
              .min(Comparator.comparingDouble(Placing.Coming::spareMm));
      from.ifPresent(
          one -> all.add(new Placing.SettingOut(axis, (FlatFace) one.feature(), one.comesOffMm())));
    }
    return all;
  }
}
