package org.fettlebench.desktop.stock.internal;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads until when something is lent: {@code 2 weeks}, {@code 24 Dec}, {@code 2026-12-24}. */
final class DueDate {
  private static final Pattern SPAN =
      Pattern.compile("(\\d{1,3}) ?(d|day|days|w|week|weeks|month|months)");

  private DueDate() {}

  /**
   * Returns the day; nothing for no words.
   *
   * @throws IllegalArgumentException if it is no day, or one before today
   */
  static Optional<LocalDate> read(String words, LocalDate today) {
    String plain = words.strip().toLowerCase(Locale.ENGLISH).replaceAll("\\s+", " ");
    if (plain.isEmpty()) {
      return Optional.empty();
    }
    LocalDate day =
        span(plain, today)
            .or(() -> date(plain, today))
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "\u201c"
                            + words.strip()
                            + "\u201d is no day; write 2 weeks, 24 Dec or"
                            + " 2026-12-24, or leave it empty"));
    if (day.isBefore(today)) {
      throw new IllegalArgumentException(
          day + " is past; write a day from " + today + " on, or leave it empty");
    }
    return Optional.of(day);
  }

  private static Optional<LocalDate> span(String words, LocalDate today) {
    Matcher parts = SPAN.matcher(words);
    if (!parts.matches()) {
      return Optional.empty();
    }
    int count = Integer.parseInt(parts.group(1));
    return Optional.of(
        switch (parts.group(2).charAt(0)) {
          case 'd' -> today.plusDays(count);
          case 'w' -> today.plusWeeks(count);
          default -> today.plusMonths(count);
        });
  }

  private static Optional<LocalDate> date(String words, LocalDate today) {
    for (String pattern :
        List.of("uuuu-M-d", "d MMM uuuu", "d MMMM uuuu", "d/M/uuuu", "d.M.uuuu")) {
      Optional<LocalDate> day = parsed(words, formatter(pattern, today));
      if (day.isPresent()) {
        return day;
      }
    }
    for (String pattern : List.of("d MMM", "d MMMM", "d/M")) {
      Optional<LocalDate> day = parsed(words, formatter(pattern, today));
      if (day.isPresent()) {
        // A day without a year is the next one of that name.
        return day.map(d -> d.isBefore(today) ? d.plusYears(1) : d);
      }
    }
    return Optional.empty();
  }

  private static DateTimeFormatter formatter(String pattern, LocalDate today) {
    DateTimeFormatterBuilder builder =
        new DateTimeFormatterBuilder().parseCaseInsensitive().appendPattern(pattern);
    if (!pattern.contains("uuuu")) {
      builder.parseDefaulting(ChronoField.YEAR, today.getYear());
    }
    return builder.toFormatter(Locale.ENGLISH);
  }

  private static Optional<LocalDate> parsed(String words, DateTimeFormatter formatter) {
    try {
      return Optional.of(LocalDate.parse(words, formatter));
    } catch (DateTimeParseException other) {
      return Optional.empty();
    }
  }
}
