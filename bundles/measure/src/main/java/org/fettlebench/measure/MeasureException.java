package org.fettlebench.measure;

/** A text or number that is no length; the message names it and says what would be understood. */
public class MeasureException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** Makes the exception with a message meant for the person who typed. */
  public MeasureException(String message) {
    super(message);
  }
}
