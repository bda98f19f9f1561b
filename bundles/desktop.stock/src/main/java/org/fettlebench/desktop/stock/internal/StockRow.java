package org.fettlebench.desktop.stock.internal;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fettlebench.club.Goods;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.widgets.VerdictMark;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/**
 * A stock line as a row of the list, in the words of the trade.
 *
 * @param line the line
 * @param today the day by which loans are overdue
 */
record StockRow(StockLine line, LocalDate today) {

  long id() {
    return line.id();
  }

  Goods goods() {
    return line.goods();
  }

  /** Returns the thread of a fastener or tap, the name of a drill's size; empty for sundries. */
  String size() {
    return switch (goods().kind()) {
      case FASTENER, TAP -> goods().thread();
      case DRILL -> goods().name().replaceFirst(" drill$", "");
      case SUNDRY -> "";
    };
  }

  /** Returns what it is besides its size, a drill with its diameter where its name has none. */
  String what(LengthUnit unit) {
    return switch (goods().kind()) {
      case FASTENER, TAP -> withoutSize();
      case DRILL -> goods().diameter().map(d -> "drill, " + figure(d, unit)).orElse("drill");
      case SUNDRY -> goods().name();
    };
  }

  private static String figure(Length diameter, LengthUnit unit) {
    return LengthFormat.show(diameter, unit);
  }

  /** Takes off what other columns say: the thread before, the length and material behind. */
  private String withoutSize() {
    String name = goods().name();
    if (!goods().thread().isEmpty() && name.startsWith(goods().thread() + " ")) {
      name = name.substring(goods().thread().length() + 1);
    }
    if (goods().length().isPresent()) {
      name = name.replaceFirst(" x [^x]*$", "");
    }
    String material = ", " + goods().material();
    return material.length() > 2 && name.endsWith(material)
        ? name.substring(0, name.length() - material.length())
        : name;
  }

  /** Returns the length as such things are sold: {@code 1/2 in}, {@code 16 mm}. */
  String length() {
    return goods()
        .length()
        .map(l -> LengthFormat.fraction(l).map(text -> text + " in").orElseGet(l::toString))
        .orElse("");
  }

  /** Returns the size by which drills and lengths are sorted, nothing first. */
  static long sorted(Optional<Length> length) {
    return length.map(Length::nanometres).orElse(0L);
  }

  /** Returns everything that is to be said of the line, the most pressing first; never nothing. */
  Set<Standing> standings() {
    Set<Standing> all = EnumSet.noneOf(Standing.class);
    if (line.lent() > 0) {
      all.add(
          line.loans().stream().anyMatch(l -> l.overdue(today)) ? Standing.OVERDUE : Standing.OUT);
    }
    if (line.quantity() == 0) {
      all.add(Standing.NONE);
    } else if (line.lowMark().filter(mark -> line.present() < mark).isPresent()) {
      all.add(Standing.LOW);
    }
    all.add(line.condition() == StockLine.Condition.WORN ? Standing.WORN : Standing.GOOD);
    if (all.size() > 1) {
      all.remove(Standing.GOOD);
    }
    return all;
  }

  private Standing first() {
    return standings().iterator().next();
  }

  String state() {
    return standings().stream().map(Standing::word).collect(Collectors.joining(", "));
  }

  Optional<VerdictMark> mark() {
    return first().mark();
  }

  /** Returns how pressing it is, the most pressing least. */
  int pressing() {
    return first().ordinal();
  }

  boolean is(Standing standing) {
    return standings().contains(standing);
  }

  /** Returns the line in a sentence: what it is and where. */
  String where() {
    return goods().name() + ", in " + line.place();
  }
}
