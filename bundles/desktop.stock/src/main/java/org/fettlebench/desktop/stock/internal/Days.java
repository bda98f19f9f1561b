package org.fettlebench.desktop.stock.internal;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Writes days and moments. */
final class Days {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.UK);
  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("d MMM, HH:mm", Locale.UK);

  private Days() {}

  static String show(LocalDate day) {
    return DAY.format(day);
  }

  /** Returns a moment of this year to the minute, an earlier one to the day. */
  static String show(Instant moment, LocalDate today) {
    LocalDateTime local = LocalDateTime.ofInstant(moment, ZoneId.systemDefault());
    return local.getYear() == today.getYear()
        ? MINUTE.format(local)
        : DAY.format(local.toLocalDate());
  }
}
