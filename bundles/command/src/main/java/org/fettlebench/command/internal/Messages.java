package org.fettlebench.command.internal;

import java.util.List;

/** The wording of the command line's own answers. */
final class Messages {
  static final String HEAD =
      "fettlebench: checks a casting kit joint by joint against what the club holds.\n"
          + "Say the words of a command; --help after them tells more, with an example.\n"
          + "\"fettlebench desktop\" opens the window.";
  static final String FOOT =
      "Every command knows  --json  (for machines),  --unit mm|in  (shown first, and meant by\n"
          + "numbers without a unit),  --data DIR  (the club's folder)  and  --help.\n"
          + "--version  alone says which version this is.\n"
          + "Exit status: 0 done, 1 done and something does not fit or is short, 2 bad input or use,\n"
          + "3 the suite cannot run, or its data are held by another.\n"
          + "Example: fettlebench thread show 2 BA";
  static final String GROUP_FOOT = "Add --help to one of these for what it takes and an example.";

  private Messages() {}

  static String noSuchCommand(String typed, List<String> near) {
    return "there is no command \""
        + typed
        + "\"; "
        + (near.isEmpty()
            ? "--help lists all commands (one of a module that does not work is missing there;"
                + " \"module list --all\" says why)"
            : "did you mean " + either(near) + "?");
  }

  static String wordMissing(String word, List<String> commands) {
    return "\"" + word + "\" needs another word: " + either(commands);
  }

  static String optionAlone(String option) {
    return "\"" + option + "\" stands alone; say a command first, --help lists them";
  }

  static String operandMissing(String words, String operand, String purpose, String example) {
    return words + " needs " + operand + ": " + purpose + ". Example: fettlebench " + example;
  }

  static String tooManyWords(String words, String extra, String synopsis) {
    return words + " cannot use \"" + extra + "\". It is called so: " + synopsis;
  }

  static String noSuchOption(String words, String option, List<String> known) {
    return words
        + " has no option "
        + option
        + "; "
        + (known.isEmpty() ? "it has none of its own" : "it knows " + String.join(", ", known));
  }

  static String valueMissing(String option, String what) {
    return option + " needs " + what + " behind it";
  }

  static String optionTwice(String option) {
    return option + " is there twice; say it once";
  }

  static String flagWithValue(String option) {
    return option + " is a switch and takes no value";
  }

  static String noSuchUnit(String symbol) {
    return "--unit \"" + symbol + "\" is not known; say mm or in";
  }

  static String notWhole(String name, String value, int least, int most) {
    return name + " \"" + value + "\" is no whole number from " + least + " to " + most;
  }

  static String notNumber(String name, String value, String above, String most) {
    return name + " \"" + value + "\" is no number above " + above + " and up to " + most;
  }

  static String fileMissing(String name) {
    return "say which file: " + name + " was not given";
  }

  static String notFileName(String name) {
    return "\"" + name + "\" is no file name";
  }

  static String noSuchFile(String file) {
    return "there is no file " + file + "; look at the name, or at the folder you stand in";
  }

  static String isFolder(String file) {
    return file + " is a folder; name a file in it";
  }

  static String unreadable(String file, String why) {
    return file + " cannot be read: " + why;
  }

  static String faults(int count) {
    return count == 1
        ? "1 fault; nothing was kept of the file"
        : count + " faults; nothing was kept of the file";
  }

  static String taken(String words) {
    return "the command \"" + words + "\" is taken already; give the module's another name";
  }

  static String commandFailed(String words, String said, String log) {
    return "the command \""
        + words
        + "\" failed: "
        + said
        + ". That is a mistake in the program, not in what you typed; more is in "
        + log;
  }

  static String callFailed(String said, String log) {
    return "the call failed: "
        + said
        + ". That is a mistake in the program, not in what you typed; more is in "
        + log;
  }

  static String notFinite(String where, Number number) {
    return "the answer has no usable number at " + where + ": " + number;
  }

  static String notJson(String where, Object value) {
    return "the answer holds at "
        + where
        + " what JSON does not know: "
        + (value == null ? "nothing" : value.getClass().getName());
  }

  private static String either(List<String> words) {
    List<String> quoted = words.stream().map(word -> "\"" + word + "\"").toList();
    int last = quoted.size() - 1;
    return last == 0
        ? quoted.get(0)
        : String.join(", ", quoted.subList(0, last)) + " or " + quoted.get(last);
  }
}
