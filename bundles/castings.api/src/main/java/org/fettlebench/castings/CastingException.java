package org.fettlebench.castings;

/** A casting that cannot be reckoned; the message names the face, the value and the remedy. */
public class CastingException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** Makes the exception with a message for people. */
  public CastingException(String message) {
    super(message);
  }
}
