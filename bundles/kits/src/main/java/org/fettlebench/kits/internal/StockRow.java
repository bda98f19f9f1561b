package org.fettlebench.kits.internal;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.StockLine;
import org.fettlebench.kits.Fastener;
import org.fettlebench.kits.internal.CsvText.Cell;
import org.fettlebench.kits.internal.FaultList.At;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;

/** One row of a stock list while it is read. */
final class StockRow {
  /** What the club's books keep of each text; see the records of club.api. */
  private static final Map<String, Integer> LONGEST =
      Map.of("name", 200, "material", 80, "place", 300);

  private final Trade trade;
  private final FaultList faults;
  private final At start;
  private final Map<String, Cell> cells;

  StockRow(Trade trade, FaultList faults, int line, Map<String, Cell> cells) {
    this.trade = trade;
    this.faults = faults;
    this.start = new At(line, 1);
    this.cells = cells;
  }

  /** Returns the receipt; empty when faults were added. */
  Optional<Receipt> read() {
    int before = faults.size();
    Optional<Goods> goods = kind().flatMap(this::goods);
    Optional<String> place = required("place", "Write where it lies, such as Cabinet / Drawer 3");
    LONGEST.forEach(this::oneLine);
    goods.map(Goods::kind).ifPresent(this::idle);
    StockLine.Condition condition = condition();
    Optional<Integer> quantity =
        required("quantity", "Write how many").flatMap(text -> whole("quantity", text, 1));
    Optional<Integer> lowMark = text("low-mark").flatMap(text -> whole("low-mark", text, 0));
    return faults.size() > before || goods.isEmpty() || quantity.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Receipt(goods.get(), place.orElseThrow(), condition, quantity.get(), lowMark));
  }

  private void oneLine(String column, int longest) {
    text(column)
        .ifPresent(
            text -> {
              if (text.length() > longest) {
                fault(
                    column,
                    "has " + text.length() + " characters, at most " + longest + " fit",
                    "Shorten it");
              } else if (!kept(column).isPresent()) {
                fault(column, "must be one line, without tabs", "Write it as one line");
              }
            });
  }

  /** Refuses what a kind of goods has no use for: it stands in the wrong row or column. */
  private void idle(Goods.Kind kind) {
    List<String> idle =
        switch (kind) {
          case FASTENER -> List.of("diameter");
          case DRILL -> List.of("thread", "style", "length");
          case TAP -> List.of("diameter", "length");
          case SUNDRY -> List.of("thread", "style", "diameter", "length");
        };
    for (String column : idle) {
      if (text(column).isPresent()) {
        fault(
            column,
            "has no meaning for a " + kind.name().toLowerCase(Locale.ROOT),
            "Empty the cell, or check the kind");
      }
    }
  }

  /** Returns a text that the club's books can keep. */
  private Optional<String> kept(String column) {
    return text(column)
        .filter(text -> text.length() <= LONGEST.get(column))
        .filter(text -> text.chars().noneMatch(Character::isISOControl));
  }

  private Optional<Goods.Kind> kind() {
    return required("kind", "Write fastener, drill, tap or sundry")
        .flatMap(
            word -> {
              Optional<Goods.Kind> kind =
                  Arrays.stream(Goods.Kind.values())
                      .filter(each -> each.name().equalsIgnoreCase(word))
                      .findFirst();
              if (kind.isEmpty()) {
                fault("kind", "is no kind of goods", "Known are fastener, drill, tap, sundry");
              }
              return kind;
            });
  }

  private Optional<Goods> goods(Goods.Kind kind) {
    Optional<Goods> goods =
        switch (kind) {
          case FASTENER -> fastener();
          case DRILL -> drill();
          case TAP -> tap();
          case SUNDRY ->
              required("name", "Write what it is")
                  .flatMap(said -> kept("name"))
                  .map(StockRow::sundry);
        };
    return goods.map(
        each ->
            new Goods(
                each.kind(),
                kept("name").orElse(each.name()),
                each.thread(),
                each.style(),
                each.diameter(),
                each.length(),
                kept("material").orElse(each.material())));
  }

  private Optional<Goods> fastener() {
    Optional<String> thread = thread();
    Optional<String> style = style();
    Optional<Length> length = length("length");
    String material = kept("material").orElse("");
    return thread.isPresent() && style.isPresent()
        ? Optional.of(GoodsWords.goods(new Fastener(thread.get(), style.get(), length, material)))
        : Optional.empty();
  }

  private Optional<String> thread() {
    Optional<String> typed = required("thread", "Write a designation such as 2 BA");
    Optional<ScrewThread> thread = typed.flatMap(trade.threads()::find);
    if (typed.isPresent() && thread.isEmpty()) {
      fault("thread", "is no thread of a known series", trade.nearThreads(typed.get()));
    }
    return thread.map(ScrewThread::designation);
  }

  private Optional<String> style() {
    Optional<String> typed = required("style", "Write a head, nut or washer, such as hexagon");
    Optional<String> style =
        typed.map(word -> trade.styleWords().get(word.toLowerCase(Locale.ROOT)));
    if (typed.isPresent() && style.isEmpty()) {
      fault(
          "style",
          "is no known head, nut or washer",
          "Known are " + String.join(", ", trade.styles()));
    }
    return style;
  }

  private Optional<Goods> drill() {
    Optional<String> size =
        required("diameter", "Write a size or a drill's name: 5/32, 4.1 mm, No 22, F");
    Optional<DrillSize> drill =
        size.flatMap(trade.drills()::find).filter(found -> found.diameter().isPositive());
    if (size.isPresent() && drill.isEmpty()) {
      fault("diameter", "is no drill", "Write it as 5/32, 4.1 mm, No 22 or F");
    }
    return drill.map(GoodsWords::drill);
  }

  private Optional<Goods> tap() {
    Optional<String> thread = thread();
    Optional<String> lead =
        required("style", "Write the tap's lead: taper, second, bottoming or set")
            .map(word -> word.toLowerCase(Locale.ROOT));
    if (lead.isPresent() && !GoodsWords.LEADS.contains(lead.get())) {
      fault("style", "is no lead of a tap", "Known are " + String.join(", ", GoodsWords.LEADS));
      return Optional.empty();
    }
    return thread.isPresent() && lead.isPresent()
        ? Optional.of(GoodsWords.tap(thread.get(), lead.get()))
        : Optional.empty();
  }

  private static Goods sundry(String name) {
    return new Goods(Goods.Kind.SUNDRY, name, "", "", Optional.empty(), Optional.empty(), "");
  }

  private StockLine.Condition condition() {
    Optional<String> word = text("condition");
    List<StockLine.Condition> all = List.of(StockLine.Condition.values());
    Optional<StockLine.Condition> condition =
        all.stream()
            .filter(each -> word.filter(each.name()::equalsIgnoreCase).isPresent())
            .findFirst();
    if (word.isPresent() && condition.isEmpty()) {
      fault("condition", "is no condition", "Write good or worn; nothing means good");
    }
    return condition.orElse(StockLine.Condition.GOOD);
  }

  private Optional<Length> length(String column) {
    return text(column)
        .flatMap(
            typed -> {
              try {
                Length length = LengthReader.read(typed);
                if (length.isPositive()) {
                  return Optional.of(length);
                }
                fault(column, "is not above 0 mm", "Measure it, or leave the cell empty");
              } catch (MeasureException refused) {
                String[] said = refused.getMessage().split("; ", 2);
                fault(column, column + ": " + said[0], said[said.length - 1]);
              }
              return Optional.empty();
            });
  }

  private Optional<Integer> whole(String column, String typed, int least) {
    if (typed.matches("\\d{1,7}")
        && Integer.parseInt(typed) >= least
        && Integer.parseInt(typed) <= 1_000_000) {
      return Optional.of(Integer.valueOf(typed));
    }
    fault(column, "is no whole number from " + least + " to 1000000", "Count them");
    return Optional.empty();
  }

  private Optional<String> text(String column) {
    return Optional.ofNullable(cells.get(column)).map(Cell::text).filter(text -> !text.isBlank());
  }

  private Optional<String> required(String column, String remedy) {
    Optional<String> text = text(column);
    if (text.isEmpty()) {
      At at = cells.containsKey(column) ? cells.get(column).at() : start;
      faults.addMissing(at, column + " is missing", remedy);
    }
    return text;
  }

  private void fault(String column, String wrong, String remedy) {
    Cell cell = cells.get(column);
    faults.add(cell.at(), cell.text(), wrong, remedy);
  }
}
