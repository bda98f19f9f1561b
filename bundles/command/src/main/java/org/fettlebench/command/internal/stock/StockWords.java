package org.fettlebench.command.internal.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.CommandException;

/** Finds stock lines by typed words: by their number, or by words that stand in them. */
final class StockWords {
  private static final int MOST_SHOWN = 10;

  private StockWords() {}

  /** Returns whether every typed word begins a word of the line. */
  static boolean fits(StockLine line, List<String> typed) {
    return all(line, typed, (word, asked) -> word.startsWith(asked));
  }

  private static boolean fitsWholly(StockLine line, List<String> typed) {
    return all(line, typed, String::equals);
  }

  private static boolean all(StockLine line, List<String> typed, BiPredicate<String, String> same) {
    List<String> words = words(line);
    List<String> asked = parts(typed);
    for (int i = 0; i < asked.size(); i++) {
      // A number belongs to the word behind it: "4 BA" is not "4" somewhere and "BA" elsewhere.
      boolean pair = i + 1 < asked.size() && isNumber(asked.get(i)) && isName(asked.get(i + 1));
      if (!stands(words, asked.subList(i, pair ? i + 2 : i + 1), same)) {
        return false;
      }
      i += pair ? 1 : 0;
    }
    return true;
  }

  private static boolean stands(
      List<String> words, List<String> run, BiPredicate<String, String> same) {
    return IntStream.rangeClosed(0, words.size() - run.size())
        .anyMatch(
            at ->
                IntStream.range(0, run.size())
                    .allMatch(i -> same.test(words.get(at + i), run.get(i))));
  }

  private static boolean isNumber(String word) {
    return word.matches("[0-9]+");
  }

  private static boolean isName(String word) {
    return word.matches("[a-z]+");
  }

  private static List<String> words(StockLine line) {
    return parts(
        List.of(
            line.goods().name(),
            line.goods().thread(),
            line.goods().style(),
            line.goods().material(),
            line.goods().kind().name(),
            line.place()));
  }

  private static List<String> parts(List<String> texts) {
    List<String> parts = new ArrayList<>();
    for (String text : texts) {
      Arrays.stream(text.toLowerCase(Locale.ROOT).split("[\\s,;]+"))
          .filter(part -> !part.isEmpty())
          .forEach(parts::add);
    }
    return parts;
  }

  /**
   * Finds the one line that is meant.
   *
   * @param typed a line's number, or words that stand in it
   * @throws CommandException if there is none, or if there are several, which it names
   */
  static StockLine one(Stock stock, List<String> typed) {
    String all = String.join(" ", typed).strip();
    if (all.matches("[0-9]{1,18}")) {
      return stock
          .line(Long.parseLong(all))
          .orElseThrow(
              () ->
                  new CommandException(
                      "there is no stock line " + all + "; \"stock list\" shows their numbers"));
    }
    List<StockLine> fitting = stock.lines().stream().filter(line -> fits(line, typed)).toList();
    List<StockLine> wholly = fitting.stream().filter(line -> fitsWholly(line, typed)).toList();
    List<StockLine> meant = wholly.isEmpty() ? fitting : wholly;
    if (meant.size() != 1) {
      throw new CommandException(meant.isEmpty() ? none(all) : several(all, meant));
    }
    return meant.get(0);
  }

  private static String none(String typed) {
    return "no stock line has the words \"" + typed + "\"; \"stock list\" shows what there is";
  }

  private static String several(String typed, List<StockLine> lines) {
    return lines.size()
        + " stock lines have the words \""
        + typed
        + "\"; say the number of the one you mean:\n"
        + lines.stream()
            .limit(MOST_SHOWN)
            .map(line -> "  " + line.id() + "  " + StockTexts.what(line) + ", " + line.place())
            .collect(Collectors.joining("\n"))
        + (lines.size() > MOST_SHOWN ? "\n  ..." : "");
  }
}
