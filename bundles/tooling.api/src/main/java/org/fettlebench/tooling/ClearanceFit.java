package org.fettlebench.tooling;

/**
 * How freely a screw passes through its clearance hole. A list that gives one hole a size, without
 * naming the fit, stands as medium.
 */
public enum ClearanceFit {
  /** Least room: ISO 273 fine, ASME B18.2.8 close. */
  CLOSE,
  /** Usual room: ISO 273 medium, ASME B18.2.8 normal. */
  MEDIUM,
  /** Most room: ISO 273 coarse, ASME B18.2.8 loose. */
  FREE
}
