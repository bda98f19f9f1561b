package org.fettlebench.fits;

/** A seat that cannot be: the message names what, where and the remedy. */
public class SeatException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** Makes the exception with a message for people. */
  public SeatException(String message) {
    super(message);
  }
}
