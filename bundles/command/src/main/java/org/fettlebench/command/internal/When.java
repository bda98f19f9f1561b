package org.fettlebench.command.internal;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Moments as people read them, in the time of where the suite runs. */
public final class When {
  private static final DateTimeFormatter FORMAT =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT).withZone(ZoneId.systemDefault());

  private When() {}

  /** Returns day and minute, such as {@code 2026-11-26 19:30}. */
  public static String said(Instant moment) {
    return FORMAT.format(moment);
  }
}
