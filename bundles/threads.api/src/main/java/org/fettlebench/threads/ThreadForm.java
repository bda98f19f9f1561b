package org.fettlebench.threads;

import java.util.Arrays;
import java.util.Optional;

/**
 * The profile of a thread, as ratios to the pitch.
 *
 * <p>The basic sizes follow from it: effective diameter = major - {@link #effectiveDropPerPitch} x
 * pitch; minor diameter = major - 2 x depth x pitch. Where a standard prints rounded sizes instead,
 * the table holds the printed ones.
 */
public enum ThreadForm {
  /** ISO metric, 60 degrees, screw thread with rounded root (ISO 68-1, ISO 724). */
  // H = cos 30 degrees; 5/8 H, 17/24 H and 3/4 H of it (ISO 68-1).
  ISO("iso", "60° ISO metric", 60, 0.866025403784, 0.541265877365, 0.613434661014, 0.649519052838),
  /** Unified, 60 degrees, screw thread with rounded root as UNR (ASME B1.1). */
  // As ISO but for 11/16 H of depth to the UNR root (Machinery's Handbook, 31st ed., p1978-1980).
  UNIFIED(
      "unified", "60° Unified", 60, 0.866025403784, 0.541265877365, 0.595392465102, 0.649519052838),
  /** Whitworth, 55 degrees (BS 84). */
  // Machinery's Handbook, 31st ed., p2087.
  WHITWORTH("whitworth", "55° Whitworth", 55, 0.960491, 0.640327, 0.640327, 0.640327),
  /** British Association, 47.5 degrees (BS 93). */
  // Machinery's Handbook, 31st ed., p2115; the standard prints its diameters rounded.
  BRITISH_ASSOCIATION(
      "british-association", "47½° British Association", 47.5, 1.13634, 0.6, 0.6, 0.6);

  private final String word;
  private final String title;
  private final double includedAngleDegrees;
  private final double triangleHeightPerPitch;
  private final double internalDepthPerPitch;
  private final double externalDepthPerPitch;
  private final double effectiveDropPerPitch;

  ThreadForm(
      String word,
      String title,
      double includedAngleDegrees,
      double triangleHeightPerPitch,
      double internalDepthPerPitch,
      double externalDepthPerPitch,
      double effectiveDropPerPitch) {
    this.word = word;
    this.title = title;
    this.includedAngleDegrees = includedAngleDegrees;
    this.triangleHeightPerPitch = triangleHeightPerPitch;
    this.internalDepthPerPitch = internalDepthPerPitch;
    this.externalDepthPerPitch = externalDepthPerPitch;
    this.effectiveDropPerPitch = effectiveDropPerPitch;
  }

  /** Returns the form that a table file calls so, such as {@code whitworth}. */
  public static Optional<ThreadForm> ofWord(String word) {
    return Arrays.stream(values()).filter(form -> form.word.equals(word)).findFirst();
  }

  /** Returns the word for it in a table file. */
  public String word() {
    return word;
  }

  /** Returns the name for people. */
  public String title() {
    return title;
  }

  /** Returns the angle between the flanks, in degrees. */
  public double includedAngleDegrees() {
    return includedAngleDegrees;
  }

  /** Returns the height of the sharp triangle over the pitch. */
  public double triangleHeightPerPitch() {
    return triangleHeightPerPitch;
  }

  /** Returns the basic depth of the internal thread over the pitch. */
  public double internalDepthPerPitch() {
    return internalDepthPerPitch;
  }

  /** Returns the basic depth of the external thread over the pitch. */
  public double externalDepthPerPitch() {
    return externalDepthPerPitch;
  }

  /** Returns by how much the effective diameter is below the major diameter, over the pitch. */
  public double effectiveDropPerPitch() {
    return effectiveDropPerPitch;
  }

  /**
   * Returns the depth that counts as 100 per cent of thread, over the pitch: the basic depth for
   * Whitworth and British Association; 0.649519 for ISO and Unified, which is the convention behind
   * the usual "75 per cent" (Machinery's Handbook, 31st ed., p2155, whose table fits hole = D - 2 x
   * 0.649519 p at 100 per cent).
   */
  public double percentDepthPerPitch() {
    // In all four forms that depth is also the drop of the effective diameter.
    return effectiveDropPerPitch;
  }
}
