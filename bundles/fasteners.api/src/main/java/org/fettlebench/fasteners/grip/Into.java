package org.fettlebench.fasteners.grip;

import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;

/**
 * What a screw screws into.
 *
 * @param kind a tapped hole or a nut
 * @param fullThread depth of full thread of the hole, or height of the nut; above 0
 */
public record Into(Kind kind, Length fullThread) {
  /**
   * Checks the depth.
   *
   * @throws MeasureException if it is not above 0
   */
  public Into {
    if (!fullThread.isPositive()) {
      throw new MeasureException("depth of full thread " + fullThread + " is not above 0 mm");
    }
  }

  /** Kinds of thread to screw into. */
  public enum Kind {
    /** A tapped hole right through, out of which a screw may come. */
    THROUGH,
    /** A tapped hole that ends, in which a screw would bottom. */
    BLIND,
    /** A nut, which the screw should fill. */
    NUT
  }
}
