package org.fettlebench.command;

/** Words or input that cannot be used; the message says what, and what would do. */
public class CommandException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Makes the exception with a message for people. */
  public CommandException(String message) {
    super(message);
  }

  /** Makes the exception with a message for people and what led to it. */
  public CommandException(String message, Throwable cause) {
    super(message, cause);
  }
}
