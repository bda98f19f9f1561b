package org.fettlebench.club;

import java.util.Optional;

/**
 * Something to put into stock.
 *
 * @param goods what
 * @param place where, as a path such as {@code Cabinet / Drawer 3}; made if new
 * @param condition its state
 * @param quantity how many, above nothing
 * @param lowMark how many should always be there; empty leaves what is set
 */
public record Receipt(
    Goods goods,
    String place,
    StockLine.Condition condition,
    int quantity,
    Optional<Integer> lowMark) {}
