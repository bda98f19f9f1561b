package org.fettlebench.club;

/** A change that the club's books do not allow; the message names what, how many and the remedy. */
public class ClubException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Makes the exception with a message for people. */
  public ClubException(String message) {
    super(message);
  }
}
