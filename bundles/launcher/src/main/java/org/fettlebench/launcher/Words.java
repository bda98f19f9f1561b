package org.fettlebench.launcher;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The words of the command line, with those that the launcher understands taken out.
 *
 * @param data what was said after {@code --data}
 * @param rest all other words in order
 */
record Words(Optional<String> data, List<String> rest) {
  private static final String DATA = "--data";

  Words {
    rest = List.copyOf(rest);
  }

  /** Returns whether the window was asked for. */
  boolean desktop() {
    return !rest.isEmpty() && rest.get(0).equals("desktop");
  }

  /**
   * Takes {@code --data DIR} or {@code --data=DIR} out of the words, wherever it stands before a
   * lone {@code --}.
   *
   * @throws LaunchException when the directory is missing, empty or said twice, or when {@code
   *     desktop} is followed by words that it does not know
   */
  static Words read(List<String> words) {
    Optional<String> data = Optional.empty();
    List<String> rest = new ArrayList<>();
    int at = 0;
    while (at < words.size() && !words.get(at).equals("--")) {
      String word = words.get(at++);
      if (word.equals(DATA)) {
        data = once(data, at < words.size() ? words.get(at++) : "");
      } else if (word.startsWith(DATA + "=")) {
        data = once(data, word.substring(DATA.length() + 1));
      } else {
        rest.add(word);
      }
    }
    rest.addAll(words.subList(at, words.size()));
    return checked(new Words(data, rest));
  }

  private static Optional<String> once(Optional<String> before, String value) {
    if (before.isPresent()) {
      throw new LaunchException(
          "--data is given twice: " + before.get() + " and " + value + ". Give one directory.");
    }
    if (value.isBlank() || value.equals("--")) {
      throw new LaunchException("--data wants a directory after it, such as --data ~/club-data");
    }
    return Optional.of(value);
  }

  private static Words checked(Words words) {
    if (words.desktop() && words.rest.size() > 1) {
      String word = words.rest.get(1);
      if (word.equals("--help") || word.equals("-h")) {
        return new Words(words.data, List.of("--help"));
      }
      throw new LaunchException(
          "desktop does not know the word " + word + ". Use: desktop [--data DIR]");
    }
    return words;
  }
}
