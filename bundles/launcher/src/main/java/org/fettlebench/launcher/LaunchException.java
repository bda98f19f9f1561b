package org.fettlebench.launcher;

/** Something that keeps the suite from starting; the message is for people and says what to do. */
final class LaunchException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  LaunchException(String message) {
    super(message);
  }

  LaunchException(String message, Throwable cause) {
    super(message, cause);
  }
}
