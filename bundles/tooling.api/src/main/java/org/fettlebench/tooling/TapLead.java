package org.fettlebench.tooling;

/** The chamfer of a hand tap. */
public enum TapLead {
  /** First tap, long lead. */
  TAPER,
  /** Second tap. */
  SECOND,
  /** Bottoming tap, shortest lead. */
  BOTTOMING
}
