package org.fettlebench.command.internal;

/** The short cautions that go with planning work that can hurt people. */
public final class Cautions {
  /** With everything that is drilled or tapped. Common practice, no source. */
  public static final String DRILLING =
      "Clamp the work, guard the spindle, take the chuck key out, wear eye protection."
          + " Taps break: back off often, and never put a finger in the hole or near swarf.";

  private Cautions() {}
}
