package org.fettlebench.castings;

import java.util.List;

/**
 * Where the finished part lies in the casting.
 *
 * @param casting what was asked
 * @param shift how far the drawing's datum lies from the rough datum
 * @param turnDegrees turns about x, y and z, small
 * @param spareMm the least spare metal of all features; below nothing when it will not clean up
 * @param features what comes off each, in the casting's order
 * @param givings what would have to give, each alone, least change first; none when it cleans up
 * @param settingOut for each axis along which faces look, the face to set out from
 */
public record Placing(
    Casting casting,
    Spot shift,
    Spot turnDegrees,
    double spareMm,
    List<Coming> features,
    List<Giving> givings,
    List<SettingOut> settingOut) {
  private static final double KNOWN_TO_MM = 1e-6;

  /** Copies what could change. */
  public Placing {
    features = List.copyOf(features);
    givings = List.copyOf(givings);
    settingOut = List.copyOf(settingOut);
  }

  /** Returns whether every feature cleans up, as closely as the least spare is known. */
  public boolean cleansUp() {
    return cleansUp(spareMm);
  }

  /** Returns whether a least spare, in millimetres, lets everything clean up. */
  public static boolean cleansUp(double spareMm) {
    return spareMm >= -KNOWN_TO_MM;
  }

  /**
   * Returns the verdict. A casting just cleans up when it has less to spare than a reading of what
   * governs may be out: setting out no better than it was measured may use that up.
   */
  public Outcome outcome() {
    if (!cleansUp()) {
      return Outcome.SHORT;
    }
    double mayBeOut =
        features.stream()
            .filter(Coming::governs)
            .mapToDouble(one -> one.feature().uncertaintyMm())
            .max()
            .orElse(0);
    return spareMm - mayBeOut > -KNOWN_TO_MM && spareMm > KNOWN_TO_MM
        ? Outcome.CLEANS_UP
        : Outcome.JUST;
  }

  /** Whether there is metal for everything. */
  public enum Outcome {
    /** Everything cleans up. */
    CLEANS_UP("cleans up"),
    /** Everything cleans up, with less to spare than a reading may be out. */
    JUST("just cleans up"),
    /** Something will not clean up. */
    SHORT("will not clean up");

    private final String word;

    Outcome(String word) {
      this.word = word;
    }

    /** Returns the words for it. */
    public String word() {
      return word;
    }
  }

  /**
   * Returns what is left to cut, in this placing, where the whole cleaning cut is lacking: the
   * plain way out when no dimension may give. Skin of the casting may show there. With these cuts
   * asked in place of the full ones the least spare is nothing, unless a cut is below nothing.
   */
  public List<LessCut> lessCuts() {
    return features.stream()
        .filter(one -> !(one.spareMm() >= -KNOWN_TO_MM))
        .map(one -> new LessCut(one.feature(), one.leastMm() - one.feature().uncertaintyMm()))
        .toList();
  }

  /**
   * A feature that is cut less than would clean it.
   *
   * @param feature which
   * @param cutMm what is sure to come off where least does; below nothing when the finished face
   *     lies outside the metal there, so that a hollow stays
   */
  public record LessCut(Feature feature, double cutMm) {
    /** Returns whether a hollow stays that no cut reaches. */
    public boolean hollow() {
      return !(cutMm >= 0);
    }
  }

  /**
   * What comes off a feature.
   *
   * @param feature which
   * @param comesOffMm at each of its rough spots, in their order; below nothing where metal lacks
   * @param spareMm the least of them, less the cut and the uncertainty
   * @param governs whether it holds the least spare down: no placing does better for it without
   *     doing worse for another that governs
   */
  public record Coming(Feature feature, List<Double> comesOffMm, double spareMm, boolean governs) {
    /** Copies what could change. */
    public Coming {
      comesOffMm = List.copyOf(comesOffMm);
    }

    /** Returns the least that comes off anywhere. */
    public double leastMm() {
      return comesOffMm.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    }

    /** Returns the most that comes off anywhere. */
    public double mostMm() {
      return comesOffMm.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }
  }

  /**
   * A change of the drawing that alone would let the casting clean up, already tried.
   *
   * @param feature which dimension gives
   * @param byMm how much: a flat face lies so much deeper, a diameter is so much larger (bore) or
   *     smaller (boss)
   * @param finishedMm what the drawing would say then: place of the face, or diameter
   * @param spareMm least spare metal of all features then
   */
  public record Giving(Feature feature, double byMm, double finishedMm, double spareMm) {}

  /**
   * Where to set out from along an axis: of the faces that look along it the one with least spare,
   * because an error of setting out costs most there.
   *
   * @param axis which
   * @param from the rough face to measure from
   * @param depthsMm how deep the finished face lies under each of its rough spots
   */
  public record SettingOut(Axis axis, FlatFace from, List<Double> depthsMm) {
    /** Copies what could change. */
    public SettingOut {
      depthsMm = List.copyOf(depthsMm);
    }
  }
}
