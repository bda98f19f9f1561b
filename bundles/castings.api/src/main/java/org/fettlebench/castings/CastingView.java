package org.fettlebench.castings;

/** From where a casting is drawn. */
public enum CastingView {
  /** From above: x to the right, y up the paper. */
  PLAN("from above", Axis.X, Axis.Y),
  /** From the front: x to the right, z up the paper. */
  FRONT("from the front", Axis.X, Axis.Z),
  /** From the right: y to the right, z up the paper. */
  SIDE("from the right", Axis.Y, Axis.Z);

  private final String words;
  private final Axis across;
  private final Axis up;

  CastingView(String words, Axis across, Axis up) {
    this.words = words;
    this.across = across;
    this.up = up;
  }

  /** Returns the words for it. */
  public String words() {
    return words;
  }

  /** Returns the axis that runs to the right on the paper. */
  public Axis across() {
    return across;
  }

  /** Returns the axis that runs up the paper. */
  public Axis up() {
    return up;
  }

  /** Returns the axis along which it looks. */
  public Axis along() {
    return switch (this) {
      case PLAN -> Axis.Z;
      case FRONT -> Axis.Y;
      case SIDE -> Axis.X;
    };
  }
}
