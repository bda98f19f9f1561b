package org.fettlebench.threads;

import java.util.Optional;
import org.fettlebench.measure.Length;

/**
 * A thread as a drawing calls for it.
 *
 * @param thread of a series, or by rule
 * @param threadClass the class written behind it, such as {@code 6g}, {@code 6H/6g}, {@code 2B},
 *     {@code medium}; empty if none was
 * @param leftHand whether it is called for left-handed
 * @param length of the screw or stud written behind it, as in {@code M6 x 20}; empty if none was
 */
public record ThreadCall(
    ScrewThread thread, Optional<String> threadClass, boolean leftHand, Optional<Length> length) {
  /** Makes the call of a right-hand thread without a length. */
  public ThreadCall(ScrewThread thread, Optional<String> threadClass) {
    this(thread, threadClass, false, Optional.empty());
  }

  /** Returns the thread's usual name, with LH behind it when it is left-handed. */
  public String designation() {
    return thread.designation() + (leftHand ? " LH" : "");
  }
}
