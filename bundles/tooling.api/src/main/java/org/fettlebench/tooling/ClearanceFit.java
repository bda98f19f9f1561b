package org.fettlebench.tooling;

/** How freely a screw passes through its clearance hole. */
public enum ClearanceFit {
  /** Least room. */
  CLOSE,
  /** Usual room. */
  MEDIUM,
  /** Most room. */
  FREE
}
