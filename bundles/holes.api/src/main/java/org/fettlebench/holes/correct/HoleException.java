package org.fettlebench.holes.correct;

/** A hole, reading or face that cannot be: the message names what, the value and the remedy. */
public class HoleException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** Makes the exception with a message for people. */
  public HoleException(String message) {
    super(message);
  }
}
