package org.fettlebench.drawing;

/** What a filled area stands for; the renderer gives it a shade. */
public enum Tone {
  /** The face of a part. */
  PART,
  /** Something standing above the face. */
  WALL,
  /** A head, nut or washer. */
  HEAD,
  /** Where a centre may be. */
  ALLOWED,
  /** Emptiness: hole, cavity, paper. */
  EMPTY
}
