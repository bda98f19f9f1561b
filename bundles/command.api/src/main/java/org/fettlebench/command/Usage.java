package org.fettlebench.command;

import java.util.ArrayList;
import java.util.List;

/**
 * How a command is called. Made with {@link #of} and the methods that follow it:
 *
 * <pre>{@code
 * Usage.of("drill near", "Shows the drills next to a size.", "drill near 5/32 --count 4")
 *     .needsMany("SIZE", "a length, or a drill's name")
 *     .option("--count", "N", "how many, 1 to 50; 6 if not said")
 *     .flag("--held", "only drills that the club holds")
 * }</pre>
 *
 * @param words the words that name it, such as {@code kit check}: small letters, figures and
 *     hyphens, single spaces between words
 * @param purpose one line that says what it does
 * @param example a whole call that works, without the program's name; it begins with the words
 * @param operands what must or may follow, in order; at most one of them takes many words
 * @param options what may be said anywhere after the words; {@code --json}, {@code --unit}, {@code
 *     --data} and {@code --help} are always there
 */
public record Usage(
    String words, String purpose, String example, List<Operand> operands, List<Option> options) {
  /**
   * Copies what could change.
   *
   * @throws IllegalArgumentException if the words or the purpose are not as said above, the example
   *     does not begin with the words, or more than one operand takes many words
   */
  public Usage {
    operands = List.copyOf(operands);
    options = List.copyOf(options);
    if (!words.matches("[a-z0-9-]+( [a-z0-9-]+)*")) {
      throw new IllegalArgumentException(
          "a command's words are small letters, figures and hyphens with single spaces, not \""
              + words
              + "\"");
    }
    if (purpose.isBlank() || !example.startsWith(words)) {
      throw new IllegalArgumentException(
          "command \"" + words + "\" needs a purpose, and an example that begins with its words");
    }
    if (operands.stream().filter(Operand::many).count() > 1) {
      throw new IllegalArgumentException(
          "command \"" + words + "\": only one operand can take many words");
    }
  }

  /** Starts a usage that has no operands and no options yet. */
  public static Usage of(String words, String purpose, String example) {
    return new Usage(words, purpose, example, List.of(), List.of());
  }

  /** Adds a word that must follow. */
  public Usage needs(String name, String operandPurpose) {
    return with(new Operand(name, operandPurpose, true, false));
  }

  /** Adds a word that may follow. */
  public Usage may(String name, String operandPurpose) {
    return with(new Operand(name, operandPurpose, false, false));
  }

  /** Adds an operand that takes one or more words. */
  public Usage needsMany(String name, String operandPurpose) {
    return with(new Operand(name, operandPurpose, true, true));
  }

  /** Adds an operand that takes any number of words. */
  public Usage mayMany(String name, String operandPurpose) {
    return with(new Operand(name, operandPurpose, false, true));
  }

  /** Adds an option with a value. */
  public Usage option(String name, String value, String optionPurpose) {
    return with(new Option(name, value, optionPurpose));
  }

  /** Adds a switch: an option without a value. */
  public Usage flag(String name, String optionPurpose) {
    return with(new Option(name, "", optionPurpose));
  }

  /** Returns the first word, under which the command is listed. */
  public String group() {
    return words.split(" ")[0];
  }

  /** Returns the call in short, such as {@code drill near SIZE... [--count N] [--held]}. */
  public String synopsis() {
    StringBuilder line = new StringBuilder(words);
    operands.forEach(operand -> line.append(' ').append(operand.synopsis()));
    options.forEach(option -> line.append(" [").append(option.synopsis()).append(']'));
    return line.toString();
  }

  private Usage with(Operand operand) {
    List<Operand> more = new ArrayList<>(operands);
    more.add(operand);
    return new Usage(words, purpose, example, more, options);
  }

  private Usage with(Option option) {
    List<Option> more = new ArrayList<>(options);
    more.add(option);
    return new Usage(words, purpose, example, operands, more);
  }

  /**
   * A word that must or may follow.
   *
   * @param name as shown in help and asked for in {@link Call}, such as {@code FILE}
   * @param purpose one line
   * @param required whether it must be there
   * @param many whether it takes all words that the other operands leave
   */
  public record Operand(String name, String purpose, boolean required, boolean many) {
    /** Returns the name with its brackets and dots, such as {@code [WORD...]}. */
    public String synopsis() {
      String shown = name + (many ? "..." : "");
      return required ? shown : "[" + shown + "]";
    }
  }

  /**
   * An option.
   *
   * @param name with its dashes, such as {@code --place}
   * @param value name of its value in help, such as {@code DRAWER}; empty for a switch
   * @param purpose one line
   */
  public record Option(String name, String value, String purpose) {
    /**
     * Refuses a name that is not two hyphens and small letters.
     *
     * @throws IllegalArgumentException if the name is not so
     */
    public Option {
      if (!name.matches("--[a-z][a-z0-9-]*")) {
        throw new IllegalArgumentException(
            "an option is two hyphens and small letters, not \"" + name + "\"");
      }
    }

    /** Returns the name with the name of its value, such as {@code --place DRAWER}. */
    public String synopsis() {
      return value.isEmpty() ? name : name + " " + value;
    }
  }
}
