package org.fettlebench.tables;

import java.util.List;

/** A table file that cannot be used: every fault with its line. */
public class TableFormatException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** Makes the exception out of all faults found in one file. */
  public TableFormatException(String file, List<String> faults) {
    super(file + ": " + String.join("; ", faults));
  }
}
