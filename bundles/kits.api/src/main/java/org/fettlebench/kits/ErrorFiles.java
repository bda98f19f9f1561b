package org.fettlebench.kits;

import java.util.List;
import org.fettlebench.club.HoleError;
import org.fettlebench.club.MeasuredError;
import org.osgi.annotation.versioning.ProviderType;

/** Reads and writes lists of measured errors (CSV). */
@ProviderType
public interface ErrorFiles {
  /**
   * Reads a list of measured errors: a line of column names, then an error a line.
   *
   * @param file name for messages
   * @param text the whole text
   * @return the errors in file order
   * @throws FaultyFileException with every fault of the file
   */
  List<HoleError> read(String file, String text);

  /** Writes the errors that count as a list that {@link #read} reads, every length exactly. */
  String write(List<MeasuredError> errors);
}
