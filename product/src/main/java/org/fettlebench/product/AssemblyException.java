package org.fettlebench.product;

/** The suite cannot be put together as the features say; the message names file and remedy. */
final class AssemblyException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  AssemblyException(String message) {
    super(message);
  }
}
