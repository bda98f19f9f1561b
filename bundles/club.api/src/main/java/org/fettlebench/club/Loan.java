package org.fettlebench.club;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * What a member has of a stock line.
 *
 * @param member who has it
 * @param quantity how many, above nothing
 * @param due until when, where agreed
 */
public record Loan(String member, int quantity, Optional<LocalDate> due) {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  /**
   * Checks the loan.
   *
   * @throws ClubException if nobody is named or the quantity is not above nothing
   */
  public Loan {
    member = Words.needed("who has it", member, 120);
    quantity = Words.aboveNothing("the quantity on loan", quantity);
    Objects.requireNonNull(due, "due");
  }

  /** Returns whether it should have been back before a day. */
  public boolean overdue(LocalDate today) {
    return due.filter(day -> day.isBefore(today)).isPresent();
  }

  /** Returns it in words: {@code Ann Hall (2) until 3 May 2026}. */
  public String words() {
    String many = quantity == 1 ? member : "%s (%d)".formatted(member, quantity);
    return due.map(day -> many + " until " + DAY.format(day)).orElse(many);
  }
}
