package org.fettlebench.tables;

/**
 * Where a figure comes from.
 *
 * @param citation the standard, handbook or rule, with edition; never blank
 * @param standing how far it may be trusted
 */
public record Source(String citation, Standing standing) {
  /** Refuses a blank citation. */
  public Source {
    if (citation.isBlank()) {
      throw new IllegalArgumentException("a source must be named");
    }
  }
}
