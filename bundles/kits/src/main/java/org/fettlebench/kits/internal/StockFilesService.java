package org.fettlebench.kits.internal;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.StockLine;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fits.HoleMethods;
import org.fettlebench.fits.Seats;
import org.fettlebench.kits.StockFiles;
import org.fettlebench.kits.internal.CsvText.Cell;
import org.fettlebench.kits.internal.CsvText.Row;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Reads and writes stock lists, which are CSV. */
@Component
public class StockFilesService implements StockFiles {
  private static final List<String> COLUMNS =
      List.of(
          "kind",
          "name",
          "thread",
          "style",
          "diameter",
          "length",
          "material",
          "place",
          "condition",
          "quantity",
          "low-mark");
  private static final List<String> NEEDED = List.of("kind", "place", "quantity");

  private static final CsvHead HEAD = new CsvHead("a stock list", COLUMNS, NEEDED);

  private final Trade trade;

  /** Takes what the names in a list must be known to. */
  @Activate
  public StockFilesService(
      @Reference Threads threads,
      @Reference Heads heads,
      @Reference Drills drills,
      @Reference HoleChooser holes,
      @Reference HoleMethods methods,
      @Reference Seats seats) {
    this.trade = new Trade(threads, heads, drills, holes, methods, seats);
  }

  @Override
  public Goods readGoods(String words) {
    return new GoodsWords(trade).goods(words);
  }

  @Override
  public List<Receipt> readStock(String file, String text) {
    FaultList faults = new FaultList(file);
    List<Row> rows = CsvText.rows(TextCheck.check(file, text), faults);
    List<Receipt> receipts = new ArrayList<>();
    if (!rows.isEmpty() && HEAD.check(rows.get(0), faults)) {
      rows.stream()
          .skip(1)
          .filter(row -> !CsvHead.blank(row))
          .forEach(row -> receipt(rows.get(0), row, faults, receipts));
    }
    faults.throwIfAny();
    return receipts;
  }

  private void receipt(Row head, Row row, FaultList faults, List<Receipt> receipts) {
    Map<String, Cell> cells = CsvHead.cells(head, row, faults);
    if (!cells.isEmpty()) {
      new StockRow(trade, faults, row.line(), cells).read().ifPresent(receipts::add);
    }
  }

  @Override
  public String write(List<StockLine> lines) {
    StringWriter text = new StringWriter();
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setHeader(COLUMNS.toArray(String[]::new))
            .setRecordSeparator("\n")
            .get();
    try (CSVPrinter printer = new CSVPrinter(text, format)) {
      for (StockLine line : lines) {
        if (line.quantity() > 0) {
          printer.printRecord(record(line));
        }
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException("a text in memory could not be written", impossible);
    }
    return text.toString();
  }

  private static List<Object> record(StockLine line) {
    Goods goods = line.goods();
    List<Object> cells = new ArrayList<>();
    cells.add(goods.kind().name().toLowerCase(Locale.ROOT));
    cells.addAll(List.of(goods.name(), goods.thread(), goods.style()));
    cells.add(goods.diameter().map(StockFilesService::exact).orElse(""));
    cells.add(goods.length().map(StockFilesService::exact).orElse(""));
    cells.addAll(List.of(goods.material(), line.place()));
    cells.add(line.condition().name().toLowerCase(Locale.ROOT));
    cells.add(line.quantity());
    cells.add(line.lowMark().map(String::valueOf).orElse(""));
    return cells;
  }

  private static String exact(Length length) {
    return GoodsWords.size(length);
  }
}
