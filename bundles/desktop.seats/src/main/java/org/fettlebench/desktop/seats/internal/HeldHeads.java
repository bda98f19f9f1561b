package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.StockLine;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.HeadStyle;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.Threads;

/** Heads of a thread with how many the club holds, held ones first. */
final class HeldHeads {
  private final Heads heads;
  private final Threads threads;
  private volatile List<StockLine> stock = List.of();

  HeldHeads(Heads heads, Threads threads) {
    this.heads = heads;
    this.threads = threads;
  }

  /** Takes the stock as it is now. */
  void stock(List<StockLine> lines) {
    stock = List.copyOf(lines);
  }

  List<StockLine> lines() {
    return stock;
  }

  /**
   * A head and how many are held.
   *
   * @param head of the tables
   * @param held fasteners of this thread and style in good condition, present now
   */
  record Held(Head head, int held) {
    String words() {
      String plain =
          head.title().startsWith(head.thread())
              ? head.title().substring(head.thread().length()).strip()
              : head.title();
      return plain + (held > 0 ? ", " + held + " held" : "");
    }
  }

  /** Returns what may sit on the flat, washers not among it, held ones first. */
  List<Held> of(ScrewThread thread) {
    List<String> washers =
        heads.styles().stream()
            .filter(style -> style.part() == HeadStyle.Part.WASHER)
            .map(HeadStyle::id)
            .toList();
    List<Held> all = new ArrayList<>();
    for (Head head : heads.forThread(thread)) {
      if (!washers.contains(head.style())) {
        all.add(new Held(head, held(thread, head.style())));
      }
    }
    all.sort(Comparator.comparing(each -> each.held() == 0));
    return all;
  }

  private int held(ScrewThread thread, String style) {
    return stock.stream()
        .filter(line -> line.goods().kind() == Goods.Kind.FASTENER)
        .filter(line -> line.condition() == StockLine.Condition.GOOD)
        .filter(line -> line.goods().style().equals(style))
        .filter(line -> same(line.goods().thread(), thread))
        .mapToInt(StockLine::present)
        .sum();
  }

  private boolean same(String designation, ScrewThread thread) {
    return designation.equals(thread.designation())
        || threads.find(designation).filter(thread::equals).isPresent();
  }

  /** Returns the threads that the club holds fasteners of, the most held first. */
  List<String> threadsHeld() {
    return stock.stream()
        .filter(line -> line.goods().kind() == Goods.Kind.FASTENER && line.present() > 0)
        .map(line -> line.goods().thread())
        .filter(thread -> !thread.isEmpty())
        .map(thread -> threads.find(thread).map(ScrewThread::designation).orElse(thread))
        .distinct()
        .sorted(org.fettlebench.desktop.widgets.Figures::compareNaturally)
        .toList();
  }

  Optional<Head> find(String style, ScrewThread thread) {
    return heads.find(style, thread);
  }
}
