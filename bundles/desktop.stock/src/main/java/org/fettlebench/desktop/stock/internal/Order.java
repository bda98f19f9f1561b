package org.fettlebench.desktop.stock.internal;

import org.fettlebench.club.StockLine;

/**
 * A deed as it was asked for: texts as typed.
 *
 * @param deed what to do
 * @param line with which line
 * @param quantity how many
 * @param member who does it, or who borrows
 * @param due until when it is lent
 * @param note why
 */
record Order(Deed deed, StockLine line, String quantity, String member, String due, String note) {}
