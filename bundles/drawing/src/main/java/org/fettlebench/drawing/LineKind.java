package org.fettlebench.drawing;

/** Kinds of line of ISO 128-2, and one of our own for what governs. */
public enum LineKind {
  /** Visible outline: continuous, wide. */
  OUTLINE,
  /** Dimensions, leaders, construction: continuous, narrow. */
  THIN,
  /** Hatching: continuous, narrow. */
  HATCH,
  /** Centre lines and axes: chain, narrow. */
  CENTRE,
  /** Hidden detail: dashed, narrow. */
  HIDDEN,
  /** The feature that governs a verdict: continuous, extra wide, in the accent. */
  GOVERNING
}
