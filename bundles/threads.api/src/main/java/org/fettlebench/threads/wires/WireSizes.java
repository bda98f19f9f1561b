package org.fettlebench.threads.wires;

import org.fettlebench.measure.Length;

/**
 * Wires that can measure a thread.
 *
 * @param best touches the flanks at the effective diameter
 * @param least just stands out above the crests of a full thread
 * @param most still touches the flanks of a full thread
 */
public record WireSizes(Length best, Length least, Length most) {
  /** Returns whether a wire is between the least and the most, both included. */
  public boolean allow(Length wire) {
    return wire.compareTo(least) >= 0 && wire.compareTo(most) <= 0;
  }
}
