package org.fettlebench.command.internal;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.fettlebench.command.CommandException;
import org.fettlebench.measure.LengthUnit;

/**
 * What was typed, with the options that every command has taken out.
 *
 * @param rest all other words, in order
 * @param help whether help was asked
 * @param json whether the answer is for machines
 * @param unit the unit asked, if any
 */
record Asked(List<String> rest, boolean help, boolean json, Optional<LengthUnit> unit) {
  /** Returns the leading words, up to the first option. */
  List<String> words() {
    return rest.stream().takeWhile(word -> !word.startsWith("-")).toList();
  }

  /**
   * Takes the options out that every command has; what follows {@code --} is left as it is. {@code
   * --version} alone asks what {@code about} answers.
   */
  static Asked of(List<String> args) {
    List<String> rest = new ArrayList<>();
    boolean help = false;
    boolean json = false;
    Optional<LengthUnit> unit = Optional.empty();
    Iterator<String> words = args.iterator();
    while (words.hasNext()) {
      String word = words.next();
      if (word.equals("--help") || word.equals("-h")) {
        help = true;
      } else if (word.equals("--json")) {
        json = true;
      } else if (word.equals("--unit") || word.startsWith("--unit=")) {
        unit = Optional.of(unit(value(word, "--unit", "mm or in", words)));
      } else if (word.equals("--data") || word.startsWith("--data=")) {
        // The launcher has opened that folder already; here it only must not stand in the way.
        value(word, "--data", "a folder", words);
      } else {
        rest.add(word);
        if (word.equals("--")) {
          words.forEachRemaining(rest::add);
        }
      }
    }
    if (rest.equals(List.of("--version"))) {
      rest.set(0, "about");
    }
    if (!rest.isEmpty() && rest.get(0).equals("help")) {
      rest.remove(0);
      help = true;
    }
    return new Asked(List.copyOf(rest), help, json, unit);
  }

  private static String value(String word, String option, String what, Iterator<String> words) {
    if (word.startsWith(option + "=")) {
      return word.substring(option.length() + 1);
    }
    if (!words.hasNext()) {
      throw new CommandException(Messages.valueMissing(option, what));
    }
    return words.next();
  }

  private static LengthUnit unit(String symbol) {
    for (LengthUnit unit : LengthUnit.values()) {
      if (unit.symbol().equals(symbol)) {
        return unit;
      }
    }
    throw new CommandException(Messages.noSuchUnit(symbol));
  }
}
