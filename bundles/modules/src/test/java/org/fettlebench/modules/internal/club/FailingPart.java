package org.fettlebench.modules.internal.club;

/** A part of a club's module that cannot be made. */
public final class FailingPart {
  /** Throws always. */
  public FailingPart() {
    throw new IllegalStateException("no seat today");
  }
}
