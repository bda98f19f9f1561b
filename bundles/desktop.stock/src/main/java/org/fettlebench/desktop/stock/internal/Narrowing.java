package org.fettlebench.desktop.stock.internal;

import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Goods;

/**
 * Which lines are asked for, before anything is typed.
 *
 * @param kind one sort of thing, or all
 * @param place a place with all places in it; empty for everywhere
 */
record Narrowing(Optional<Goods.Kind> kind, String place) {
  static final Narrowing NONE = new Narrowing(Optional.empty(), "");

  boolean takes(StockRow row) {
    return takesKind(row) && takesPlace(row.line().place());
  }

  private boolean takesKind(StockRow row) {
    return kind.isEmpty() || kind.get() == row.goods().kind();
  }

  private boolean takesPlace(String other) {
    return place.isEmpty() || other.equals(place) || other.startsWith(place + Places.PART);
  }

  List<StockRow> of(List<StockRow> rows) {
    return rows.stream().filter(this::takes).toList();
  }

  Narrowing kind(Optional<Goods.Kind> other) {
    return new Narrowing(other, place);
  }

  Narrowing place(String other) {
    return new Narrowing(kind, other);
  }
}
