package org.fettlebench.kits;

import java.util.List;
import java.util.stream.Collectors;

/** A file that cannot be used, with everything that is wrong with it. */
public class FaultyFileException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  /**
   * Makes the exception out of all faults of one file; at least one. Its message has one line for
   * each, as {@link Fault#toString} writes it.
   */
  public FaultyFileException(List<Fault> faults) {
    super(faults.stream().map(Fault::toString).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /** Returns the faults in the order of the file. */
  public List<Fault> faults() {
    return faults;
  }

  /**
   * One thing that is wrong. As text: {@code file:line:column: "value" what is wrong. Remedy}.
   *
   * @param file name
   * @param line from 1
   * @param column from 1
   * @param value what stands there; may be empty
   * @param wrong what is wrong with it
   * @param remedy what to write instead
   */
  public record Fault(
      String file, int line, int column, String value, String wrong, String remedy) {
    @Override
    public String toString() {
      return file
          + ":"
          + line
          + ":"
          + column
          + ": "
          + (value.isEmpty() ? "" : "\"" + value + "\" ")
          + wrong
          + ". "
          + remedy;
    }
  }
}
