package org.fettlebench.tooling;

/** The chamfer of a hand tap; its length in pitches stands in a table of kind blind-holes. */
public enum TapLead {
  /** First tap, long lead. */
  TAPER,
  /** Second tap. */
  SECOND,
  /** Bottoming tap, shortest lead. */
  BOTTOMING
}
