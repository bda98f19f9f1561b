package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fettlebench.club.Goods;
import org.fettlebench.kits.Fastener;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;

/** Understands goods as people say them in one line, and gives goods their usual names. */
final class GoodsWords {
  static final String EXAMPLE = "write it as 2 BA hexagon x 1/2 in steel";

  private static final String ANY_EXAMPLE =
      EXAMPLE + ", drill 5/32, tap 2 BA taper or sundry cutting oil";

  /** A set counts for each of its taps. */
  static final List<String> LEADS = List.of("taper", "second", "bottoming", "set");

  private static final String SUNDRY = "sundry";

  private static final Set<String> UNITS = Set.of("in", "in.", "inch", "mm", "thou", "\"");
  private static final Set<String> NO_MEANING =
      Set.of("screw", "screws", "bolt", "bolts", "head", "headed", "long", "of", "in", "made");
  private static final int LONGEST_THREAD = 6;

  private final Trade trade;

  GoodsWords(Trade trade) {
    this.trade = trade;
  }

  /** Reads any goods; refuses with a message that says what and the remedy. */
  Goods goods(String words) {
    List<String> tokens = tokens(words);
    if (tokens.isEmpty()) {
      throw new IllegalArgumentException("nothing is said; " + ANY_EXAMPLE);
    }
    if (tokens.get(0).equalsIgnoreCase(SUNDRY)) {
      return sundry(words.strip().substring(SUNDRY.length()).strip());
    }
    if (takeAny(tokens, Set.of("drill", "drills"))) {
      return drill(String.join(" ", tokens));
    }
    if (takeAny(tokens, Set.of("tap", "taps"))) {
      return tap(tokens);
    }
    return goods(fastener(words));
  }

  private static Goods sundry(String name) {
    if (name.isEmpty()) {
      throw new IllegalArgumentException("the sundry has no name; write it as sundry cutting oil");
    }
    return new Goods(Goods.Kind.SUNDRY, name, "", "", Optional.empty(), Optional.empty(), "");
  }

  /** Returns a fastener as goods with its usual name. */
  static Goods goods(Fastener fastener) {
    return new Goods(
        Goods.Kind.FASTENER,
        name(fastener),
        fastener.thread(),
        fastener.style(),
        Optional.empty(),
        fastener.length(),
        fastener.material());
  }

  private static String name(Fastener fastener) {
    boolean headed = fastener.length().isPresent() && !fastener.style().equals(Trade.STUD);
    String style = fastener.style().replace('-', ' ') + (headed ? " screw" : "");
    return fastener.thread()
        + " "
        + style
        + fastener.length().map(length -> " x " + size(length)).orElse("")
        + (fastener.material().isBlank() ? "" : ", " + fastener.material());
  }

  /**
   * Returns a size as the trade writes it: the inch fraction, if it is one that stands on rules.
   */
  static String size(Length length) {
    return LengthFormat.fraction(length).map(text -> text + " in").orElse(length.toString());
  }

  Goods drill(String size) {
    DrillSize drill =
        trade
            .drills()
            .find(size)
            .filter(found -> found.diameter().isPositive())
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "'" + size + "' is no drill; write it as 5/32, 4.1 mm, No 22 or F"));
    return drill(drill);
  }

  static Goods drill(DrillSize drill) {
    return new Goods(
        Goods.Kind.DRILL,
        drill.name() + " drill",
        "",
        "",
        Optional.of(drill.diameter()),
        Optional.empty(),
        "");
  }

  private Goods tap(List<String> tokens) {
    ScrewThread thread = takeThread(tokens);
    String lead = String.join(" ", tokens).toLowerCase(Locale.ROOT);
    if (!LEADS.contains(lead)) {
      throw new IllegalArgumentException(
          (lead.isEmpty() ? "the tap's lead is missing" : "'" + lead + "' is no lead of a tap")
              + "; write taper, second, bottoming or set behind "
              + thread.designation());
    }
    return tap(thread.designation(), lead);
  }

  static Goods tap(String thread, String lead) {
    return new Goods(
        Goods.Kind.TAP,
        thread + " " + (lead.equals("set") ? "set of taps" : lead + " tap"),
        thread,
        lead,
        Optional.empty(),
        Optional.empty(),
        "");
  }

  /** Reads a fastener; refuses with a message that says what and the remedy. */
  Fastener fastener(String words) {
    List<String> tokens = tokens(words);
    ScrewThread thread = takeThread(tokens);
    String style = takeStyle(tokens, words);
    Optional<Length> length = takeLength(tokens);
    tokens.removeIf(token -> NO_MEANING.contains(token.toLowerCase(Locale.ROOT)));
    String material = String.join(" ", tokens);
    if (!material.matches("[\\p{L} -]*")) {
      throw new IllegalArgumentException(
          "'" + material + "' cannot be understood behind the size; " + EXAMPLE);
    }
    return new Fastener(thread.designation(), style, length, material);
  }

  private static List<String> tokens(String words) {
    // A comma between digits is a decimal comma.
    String spaced = words.replaceAll(",(?!\\d)|(?<!\\d),", " ").replace('×', 'x').strip();
    return spaced.isEmpty()
        ? new ArrayList<>()
        : new ArrayList<>(Arrays.asList(spaced.split("\\s+")));
  }

  private static boolean takeAny(List<String> tokens, Set<String> wanted) {
    return tokens.removeIf(token -> wanted.contains(token.toLowerCase(Locale.ROOT)));
  }

  /** Takes the longest beginning that is a thread. */
  private ScrewThread takeThread(List<String> tokens) {
    for (int n = Math.min(LONGEST_THREAD, tokens.size()); n > 0; n--) {
      Optional<ScrewThread> thread = trade.threads().find(String.join(" ", tokens.subList(0, n)));
      boolean unitFollows = n < tokens.size() && UNITS.contains(tokens.get(n));
      if (thread.isPresent() && !(unitFollows && n > 1)) {
        tokens.subList(0, n).clear();
        return thread.get();
      }
    }
    String typed = String.join(" ", tokens.subList(0, Math.min(2, tokens.size())));
    throw new IllegalArgumentException(
        "'" + typed + "' does not begin with a known thread; " + trade.nearThreads(typed));
  }

  /** Takes the longest run of words that is a style. */
  private String takeStyle(List<String> tokens, String words) {
    Map<String, String> styles = trade.styleWords();
    for (int n = Math.min(4, tokens.size()); n > 0; n--) {
      for (int from = 0; from + n <= tokens.size(); from++) {
        List<String> run = tokens.subList(from, from + n);
        String style = styles.get(String.join(" ", run).toLowerCase(Locale.ROOT));
        if (style != null) {
          run.clear();
          return style;
        }
      }
    }
    throw new IllegalArgumentException(
        "'"
            + words.strip()
            + "' names no known head, nut or washer; known are "
            + String.join(", ", trade.styles()));
  }

  /** Takes what stands behind an x, or any run that is a length by itself. */
  private static Optional<Length> takeLength(List<String> tokens) {
    int behind = tokens.indexOf("x") < 0 ? tokens.indexOf("X") : tokens.indexOf("x");
    if (behind >= 0) {
      tokens.remove(behind);
      return Optional.of(lengthAt(tokens, behind));
    }
    for (int i = 0; i < tokens.size(); i++) {
      if (tokens.get(i).matches("[.\\d].*")) {
        return Optional.of(lengthAt(tokens, i));
      }
    }
    return Optional.empty();
  }

  private static Length lengthAt(List<String> tokens, int at) {
    MeasureException refused = new MeasureException("no length stands behind x; " + EXAMPLE);
    for (int n = Math.min(3, tokens.size() - at); n > 0; n--) {
      try {
        Length length = LengthReader.read(String.join(" ", tokens.subList(at, at + n)));
        if (!length.isPositive()) {
          throw new IllegalArgumentException("a length of " + length + " is not above 0 mm");
        }
        tokens.subList(at, at + n).clear();
        return length;
      } catch (MeasureException noLength) {
        // The shortest run says best what is wrong with it.
        refused = noLength;
      }
    }
    throw new IllegalArgumentException(refused.getMessage(), refused);
  }
}
