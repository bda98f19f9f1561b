package org.fettlebench.command.internal.holeplace;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.command.CommandException;
import org.fettlebench.holes.correct.Reading;
import org.fettlebench.holes.correct.Reading.Reference;
import org.fettlebench.holes.correct.Reading.To;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.Point;

/** Reads a reading as it is typed, such as {@code edge 4-1 over pin 8.41 mm +- 0.02 mm}. */
final class ReadingWords {
  private static final Pattern EDGE = Pattern.compile("edge (\\d+) ?- ?(\\d+):? (.*)");
  private static final Pattern CORNER = Pattern.compile("corner (\\d+):? (.*)");
  private static final Pattern HOLE =
      Pattern.compile(
          "hole at ([^,]+), ?([^:,]+?) across ([^:,]+?):? ((?:centre|near rim|far rim|over pin|to pin) .*)");
  private static final Pattern TO =
      Pattern.compile(
          "(centre|near rim|far rim|over pin|to pin) (.+?)(?: ?(?:\\+-|\\+/-|±) ?(.+))?");
  static final String UNDERSTOOD =
      "understood are \"edge 4-1 over pin 8.41 mm\", \"corner 2 near rim 5.2 mm\" and \"hole at 20 mm,"
          + " 5 mm across 4 mm over pin 31.2 mm\", with centre, near rim, far rim, over pin or to"
          + " pin, and \"+- 0.05 mm\" behind if it is not the same for all";

  private final List<Point> corners;
  private final Optional<Length> plusMinus;

  ReadingWords(List<Point> corners, Optional<Length> plusMinus) {
    this.corners = corners;
    this.plusMinus = plusMinus;
  }

  Reading read(String typed) {
    String text = typed.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    Matcher edge = EDGE.matcher(text);
    if (edge.matches()) {
      return read(typed, edge(typed, edge.group(1), edge.group(2)), edge.group(3));
    }
    Matcher corner = CORNER.matcher(text);
    if (corner.matches()) {
      int number = number(typed, corner.group(1));
      Reference spot = new Reading.Spot("corner " + number, corners.get(number - 1), 0);
      return read(typed, spot, corner.group(2));
    }
    Matcher hole = HOLE.matcher(text);
    if (hole.matches()) {
      Point at = new Point(length(hole.group(1)), length(hole.group(2)));
      Reference spot =
          new Reading.Spot(
              "hole at " + hole.group(1) + ", " + hole.group(2), at, length(hole.group(3)));
      return read(typed, spot, hole.group(4));
    }
    throw wrong(typed);
  }

  private static CommandException wrong(String typed) {
    return new CommandException("\"" + typed + "\" is no reading; " + UNDERSTOOD);
  }

  private Reading read(String typed, Reference from, String rest) {
    Matcher to = TO.matcher(rest);
    if (!to.matches()) {
      throw wrong(typed);
    }
    double within =
        to.group(3) != null
            ? length(to.group(3))
            : plusMinus
                .map(Length::millimetres)
                .orElseThrow(
                    () ->
                        new CommandException(
                            "\""
                                + typed
                                + "\": nothing says how far it may be out; add \"+- 0.05 mm\" to"
                                + " it, or --plus-minus for all"));
    return new Reading(from, to(to.group(1)), length(to.group(2)), within);
  }

  private static To to(String words) {
    for (To to : To.values()) {
      if (to.words().equals(words)) {
        return to;
      }
    }
    throw new IllegalArgumentException(words);
  }

  private static double length(String text) {
    return LengthReader.read(text).millimetres();
  }

  private Reference edge(String typed, String first, String second) {
    int one = number(typed, first);
    int two = number(typed, second);
    int count = corners.size();
    if (one % count + 1 != two && two % count + 1 != one) {
      throw new CommandException(
          "\"" + typed + "\": corners " + one + " and " + two + " are not the ends of one edge");
    }
    int start = one % count + 1 == two ? one : two;
    return new Reading.Edge(
        "edge from corner " + start + " to corner " + (start % count + 1),
        corners.get(start - 1),
        corners.get(start % count));
  }

  private int number(String typed, String digits) {
    int number = digits.length() < 6 ? Integer.parseInt(digits) : 0;
    if (number < 1 || number > corners.size()) {
      throw new CommandException(
          "\"" + typed + "\": corner " + digits + " is outside 1 to " + corners.size());
    }
    return number;
  }
}
