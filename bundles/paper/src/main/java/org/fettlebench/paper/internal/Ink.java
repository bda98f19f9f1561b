package org.fettlebench.paper.internal;

/** Greys and colours on paper; what matters reads in black and white as well. */
enum Ink {
  /** Text and outlines. */
  BLACK(0x1B1B1B),
  /** Lesser text. */
  FAINT(0x5A6067),
  /** Rules between things. */
  RULE(0xB5B1A8),
  /** What governs. */
  GOVERNS(0x1D4F86),
  /** It fits. */
  GOOD(0x27683A),
  /** It asks for care. */
  CARE(0x8A5800),
  /** It fails. */
  BAD(0xA3231C),
  /** Paper. */
  WHITE(0xFFFFFF),
  /** The face of a part. */
  PART(0xF1F0EC),
  /** What stands above the face. */
  WALL(0xDCDAD3),
  /** A head. */
  HEAD(0xDFE3E8),
  /** Where a centre may be. */
  ALLOWED(0xBBD8C4);

  private final int rgb;

  Ink(int rgb) {
    this.rgb = rgb;
  }

  /** Returns a part of the colour, 0 to 1: 0 red, 1 green, 2 blue. */
  float part(int index) {
    return (rgb >> (16 - 8 * index) & 0xFF) / 255f;
  }
}
