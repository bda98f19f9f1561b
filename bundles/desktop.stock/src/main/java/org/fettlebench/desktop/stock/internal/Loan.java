package org.fettlebench.desktop.stock.internal;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a member has of a line, read out of the words in which a stock line tells it: {@code Ann
 * Hall (2) until 3 May 2026; Tom Reed}.
 *
 * @param member who has it
 * @param quantity how many, above nothing
 * @param due until when, where agreed
 */
record Loan(String member, int quantity, Optional<LocalDate> due) {
  private static final Pattern WORDS =
      Pattern.compile("(.+?)(?: \\((\\d{1,9})\\))?(?: until (\\d{1,2} \\p{L}+ \\d{4}))?");
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  /** Returns the loans that a line's words tell of; none for no words. */
  static List<Loan> read(String words) {
    return Arrays.stream(words.split(";"))
        .map(String::strip)
        .filter(part -> !part.isEmpty())
        .map(Loan::one)
        .toList();
  }

  private static Loan one(String words) {
    Matcher parts = WORDS.matcher(words);
    if (!parts.matches()) {
      return new Loan(words, 1, Optional.empty());
    }
    int quantity = Optional.ofNullable(parts.group(2)).map(Integer::parseInt).orElse(1);
    return new Loan(
        parts.group(1), quantity, Optional.ofNullable(parts.group(3)).flatMap(Loan::day));
  }

  private static Optional<LocalDate> day(String words) {
    try {
      return Optional.of(LocalDate.parse(words, DAY));
    } catch (DateTimeParseException noDay) {
      return Optional.empty();
    }
  }

  /** Returns whether it should have been back before a day. */
  boolean overdue(LocalDate today) {
    return due.filter(day -> day.isBefore(today)).isPresent();
  }
}
