package org.fettlebench.command;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.osgi.annotation.versioning.ProviderType;

/**
 * One call of a command, its words already taken apart. Names are those of the command's own {@link
 * Usage}: operands without, options with their dashes. To ask for a name that the usage does not
 * have is a mistake of the command and throws {@link IllegalArgumentException}.
 */
@ProviderType
public interface Call {
  /** Returns an operand; one that takes many words comes with single spaces between them. */
  Optional<String> operand(String name);

  /** Returns all words of an operand that takes many. */
  List<String> operands(String name);

  /** Returns the value of an option. */
  Optional<String> option(String name);

  /** Returns whether a switch was given. */
  boolean on(String name);

  /**
   * Returns the value of an operand or option as a whole number; absent when it was not given.
   *
   * @throws CommandException if it is no whole number from {@code least} to {@code most}
   */
  Optional<Integer> whole(String name, int least, int most);

  /**
   * Returns the value of an operand or option as a number; absent when it was not given.
   *
   * @throws CommandException if it is no number above {@code above} and up to {@code most}
   */
  Optional<Double> number(String name, double above, double most);

  /**
   * Returns the value of an operand or option as a length; absent when it was not given. A number
   * without a unit is taken only when the person said {@code --unit}.
   *
   * @throws CommandException if it is no length, or has no unit
   */
  Optional<Length> length(String name);

  /**
   * Returns a file named by an operand or option, as seen from where the person stands.
   *
   * @throws CommandException if it was not given, or is no file name
   */
  Path file(String name);

  /**
   * Returns the text (UTF-8) of a file named by an operand or option; {@code -} is what is piped
   * in.
   *
   * @throws CommandException if it was not given, is no file, cannot be read or is not UTF-8
   */
  String text(String name);

  /** Returns what is piped in. */
  InputStream in();

  /** Returns where a command that streams writes; others return a {@link Reply}. */
  PrintStream out();

  /** Returns where a command that was asked to tell how far it is writes that. */
  PrintStream err();

  /** Returns whether the answer is for machines. */
  boolean json();

  /** Returns the unit in which lengths are shown first: what {@code --unit} says, else the mm. */
  LengthUnit unit();
}
