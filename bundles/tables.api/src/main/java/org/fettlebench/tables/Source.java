package org.fettlebench.tables;

import java.util.Optional;

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

  /** Returns the words of a standing that a person should know before trusting the figure. */
  public Optional<String> doubt() {
    return standing == Standing.FROM_MEMORY || standing == Standing.COMMON_PRACTICE
        ? Optional.of(standing.words())
        : Optional.empty();
  }
}
