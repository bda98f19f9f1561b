package org.fettlebench.command;

import java.util.List;

/**
 * How a command is called.
 *
 * @param words the words that name it, such as {@code kit check}
 * @param purpose one line
 * @param example a whole call that works, without the program's name
 * @param operands what must or may follow, in order
 * @param options what may be said anywhere after the words; {@code --json}, {@code --data} and
 *     {@code --help} are always there
 */
public record Usage(
    String words, String purpose, String example, List<Operand> operands, List<Option> options) {
  /** Copies what could change. */
  public Usage {
    operands = List.copyOf(operands);
    options = List.copyOf(options);
  }

  /**
   * A word that must or may follow.
   *
   * @param name as shown in help and asked for in {@link Call}, such as {@code FILE}
   * @param purpose one line
   * @param required whether it must be there
   * @param many whether it takes all words that are left
   */
  public record Operand(String name, String purpose, boolean required, boolean many) {}

  /**
   * An option.
   *
   * @param name with its dashes, such as {@code --place}
   * @param value name of its value in help, such as {@code DRAWER}; empty for a switch
   * @param purpose one line
   */
  public record Option(String name, String value, String purpose) {}
}
