package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fettlebench.club.Goods;
import org.fettlebench.club.StockLine;
import org.fettlebench.kits.Fastener;
import org.fettlebench.kits.JointReport.Fetch.State;
import org.fettlebench.kits.Kit;

/**
 * The fasteners of the bag and of stock while they are reserved, joint by joint, so that none is
 * counted twice.
 */
final class FastenerPool {
  /**
   * Some equal fasteners taken for one joint.
   *
   * @param box where from
   * @param quantity how many
   */
  record Taken(Box box, int quantity) {}

  /** Equal fasteners in one place, and how many of them are still free. */
  static final class Box {
    private final Fastener fastener;
    private final boolean bag;
    private final String place;
    private int free;

    private Box(Fastener fastener, boolean bag, String place, int free) {
      this.fastener = fastener;
      this.bag = bag;
      this.place = place;
      this.free = free;
    }

    Fastener fastener() {
      return fastener;
    }

    boolean isBag() {
      return bag;
    }

    String place() {
      return place;
    }

    int free() {
      return free;
    }
  }

  private final Trade trade;
  private final List<Box> boxes = new ArrayList<>();
  private final List<StockLine> notToBeHad = new ArrayList<>();
  private final Map<String, String> canonical = new HashMap<>();

  FastenerPool(Trade trade, Kit kit, List<StockLine> lines) {
    this.trade = trade;
    for (Kit.BagLine line : kit.bag()) {
      boxes.add(new Box(tidy(line.fastener()), true, "the kit's bag", line.there()));
    }
    lines.stream()
        .filter(line -> line.goods().kind() == Goods.Kind.FASTENER)
        .filter(line -> !line.goods().thread().isBlank() && !line.goods().style().isBlank())
        .sorted(Comparator.comparing(StockLine::place).thenComparing(StockLine::id))
        .forEach(this::addLine);
  }

  private void addLine(StockLine line) {
    if (Held.state(line) == State.IN) {
      boxes.add(new Box(fastener(line.goods()), false, line.place(), line.present()));
    }
    if (Held.state(line) != State.IN || line.lent() > 0) {
      notToBeHad.add(line);
    }
  }

  private Fastener fastener(Goods goods) {
    return tidy(
        new Fastener(
            goods.thread(),
            goods.style(),
            goods.length().filter(length -> length.isPositive()),
            goods.material()));
  }

  private Fastener tidy(Fastener raw) {
    return new Fastener(
        canonical.computeIfAbsent(raw.thread(), trade::canonical),
        raw.style().strip().toLowerCase(Locale.ROOT),
        raw.length(),
        raw.material().strip());
  }

  /**
   * Returns whether a fastener is just what is wanted; a wanted one without material is not nice.
   */
  boolean same(Fastener held, Fastener wanted) {
    Fastener tidy = tidy(wanted);
    return held.thread().equals(tidy.thread())
        && held.style().equals(tidy.style())
        && held.length().equals(tidy.length())
        && (tidy.material().isBlank() || held.material().equalsIgnoreCase(tidy.material()));
  }

  private boolean serves(Box box, Fastener wanted) {
    return same(box.fastener, wanted)
        // A kit's list need not repeat what its joints say.
        || box.bag && box.fastener.material().isBlank() && same(box.fastener, without(wanted));
  }

  private static Fastener without(Fastener wanted) {
    return new Fastener(wanted.thread(), wanted.style(), wanted.length(), "");
  }

  /** Reserves up to {@code count}: from the bag first, then from stock in the order of places. */
  List<Taken> take(Fastener wanted, int count) {
    List<Taken> taken = new ArrayList<>();
    int missing = count;
    for (Box box : boxes) {
      if (missing > 0 && box.free > 0 && serves(box, wanted)) {
        int quantity = Math.min(missing, box.free);
        box.free -= quantity;
        missing -= quantity;
        taken.add(new Taken(box, quantity));
      }
    }
    return taken;
  }

  /** Gives back what was reserved. */
  void release(List<Taken> taken) {
    taken.forEach(some -> some.box().free += some.quantity());
  }

  /** Returns boxes of stock that still hold something, in the order of places. */
  List<Box> freeStock() {
    return boxes.stream().filter(box -> !box.bag && box.free > 0).toList();
  }

  /** Returns stock lines that hold just what is wanted, but cannot be had: lent or worn. */
  List<StockLine> notToBeHad(Fastener wanted) {
    return notToBeHad.stream().filter(line -> same(fastener(line.goods()), wanted)).toList();
  }

  static int count(List<Taken> taken) {
    return taken.stream().mapToInt(Taken::quantity).sum();
  }
}
