package org.fettlebench.tables;

import java.util.List;

/** A table file that cannot be used: every fault with its line. */
public class TableFormatException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final List<String> faults;

  /**
   * Makes the exception out of all faults found in one file.
   *
   * @param place the file, or within a file that is already named the line
   * @param faults each with its line or column, what is wrong and what to do about it
   */
  public TableFormatException(String place, List<String> faults) {
    super(place + ": " + String.join("; ", faults));
    this.faults = List.copyOf(faults);
  }

  /** Returns all faults, in file order. */
  public List<String> faults() {
    return faults;
  }
}
