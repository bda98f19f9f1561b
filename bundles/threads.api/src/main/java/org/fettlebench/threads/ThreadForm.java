package org.fettlebench.threads;

/** The profile of a thread, as ratios to the pitch. */
public enum ThreadForm {
  /** ISO metric and Unified, 60 degrees (ISO 68-1, ASME B1.1). */
  ISO("60° ISO and Unified", 60, 0.866025403784, 0.541265877365, 0.613434660, 0.649519052838),
  /** Whitworth, 55 degrees (BS 84). */
  WHITWORTH("55° Whitworth", 55, 0.960491, 0.640327, 0.640327, 0.640327),
  /** British Association, 47.5 degrees (BS 93). */
  BRITISH_ASSOCIATION("47½° British Association", 47.5, 1.136, 0.6, 0.6, 0.6);

  private final String title;
  private final double includedAngleDegrees;
  private final double triangleHeightPerPitch;
  private final double internalDepthPerPitch;
  private final double externalDepthPerPitch;
  private final double percentDepthPerPitch;

  ThreadForm(
      String title,
      double includedAngleDegrees,
      double triangleHeightPerPitch,
      double internalDepthPerPitch,
      double externalDepthPerPitch,
      double percentDepthPerPitch) {
    this.title = title;
    this.includedAngleDegrees = includedAngleDegrees;
    this.triangleHeightPerPitch = triangleHeightPerPitch;
    this.internalDepthPerPitch = internalDepthPerPitch;
    this.externalDepthPerPitch = externalDepthPerPitch;
    this.percentDepthPerPitch = percentDepthPerPitch;
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

  /** Returns the depth that counts as 100 per cent of thread, over the pitch. */
  public double percentDepthPerPitch() {
    return percentDepthPerPitch;
  }
}
