package org.fettlebench.castings;

/** Which way a flat face looks, out of the metal. */
public enum Towards {
  /** Against x. */
  LEFT("left", Axis.X, -1),
  /** Along x. */
  RIGHT("right", Axis.X, 1),
  /** Against y, towards the reader. */
  NEAR("near", Axis.Y, -1),
  /** Along y, away from the reader. */
  FAR("far", Axis.Y, 1),
  /** Against z. */
  DOWN("down", Axis.Z, -1),
  /** Along z. */
  UP("up", Axis.Z, 1);

  private final String word;
  private final Axis axis;
  private final int sign;

  Towards(String word, Axis axis, int sign) {
    this.word = word;
    this.axis = axis;
    this.sign = sign;
  }

  /** Returns the word for it in files and for people. */
  public String word() {
    return word;
  }

  /** Returns the axis that it looks along. */
  public Axis axis() {
    return axis;
  }

  /** Returns 1 when it looks along the axis, -1 when against it. */
  public int sign() {
    return sign;
  }
}
