package org.fettlebench.store;

/**
 * The store could not do what was asked; nothing of it was kept. The message is for people: it
 * names the store's place and the remedy.
 */
public class StoreException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Makes the exception with a message for people and its cause. */
  public StoreException(String message, Throwable cause) {
    super(message, cause);
  }

  /** Makes the exception with a message for people. */
  public StoreException(String message) {
    super(message);
  }
}
