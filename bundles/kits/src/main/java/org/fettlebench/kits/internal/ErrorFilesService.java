package org.fettlebench.kits.internal;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.fettlebench.club.ClubException;
import org.fettlebench.club.HoleError;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.HoleMethods;
import org.fettlebench.kits.ErrorFiles;
import org.fettlebench.kits.internal.CsvText.Cell;
import org.fettlebench.kits.internal.CsvText.Row;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.MeasureException;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lists of measured errors as CSV. */
@Component(service = ErrorFiles.class)
public final class ErrorFilesService implements ErrorFiles {
  private static final List<String> COLUMNS =
      List.of("date", "method", "x", "y", "member", "machine", "note");
  private static final CsvHead HEAD =
      new CsvHead("a list of measured errors", COLUMNS, List.of("date", "method", "x", "y"));

  private final HoleMethods methods;

  /** Takes the methods that errors may be of. */
  @Activate
  public ErrorFilesService(@Reference HoleMethods methods) {
    this.methods = methods;
  }

  @Override
  public List<HoleError> read(String file, String text) {
    FaultList faults = new FaultList(file);
    List<Row> rows = CsvText.rows(TextCheck.check(file, text), faults);
    List<HoleError> errors = new ArrayList<>();
    if (rows.isEmpty()) {
      faults.addMissing(
          new FaultList.At(1, 1),
          "the list is empty",
          "Begin it with the line " + String.join(",", COLUMNS));
    } else if (HEAD.check(rows.get(0), faults)) {
      rows.stream()
          .skip(1)
          .filter(row -> !CsvHead.blank(row))
          .forEach(row -> error(rows.get(0), row, faults).ifPresent(errors::add));
    }
    faults.throwIfAny();
    return errors;
  }

  private Optional<HoleError> error(Row head, Row row, FaultList faults) {
    Map<String, Cell> cells = CsvHead.cells(head, row, faults);
    if (cells.isEmpty()) {
      return Optional.empty();
    }
    Cell none = new Cell("", new FaultList.At(row.line(), 1));
    Optional<LocalDate> date = date(cells.getOrDefault("date", none), faults);
    Optional<String> method = method(cells.getOrDefault("method", none), faults);
    Optional<Length> x = length("x", cells.getOrDefault("x", none), faults);
    Optional<Length> y = length("y", cells.getOrDefault("y", none), faults);
    if (date.isEmpty() || method.isEmpty() || x.isEmpty() || y.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new HoleError(
              method.get(),
              x.get(),
              y.get(),
              date.get(),
              cells.getOrDefault("member", none).text(),
              cells.getOrDefault("machine", none).text(),
              cells.getOrDefault("note", none).text()));
    } catch (ClubException refused) {
      faults.add(new FaultList.At(row.line(), 1), "", refused.getMessage(), "");
      return Optional.empty();
    }
  }

  private static Optional<LocalDate> date(Cell cell, FaultList faults) {
    try {
      return Optional.of(LocalDate.parse(cell.text()));
    } catch (DateTimeParseException e) {
      faults.add(cell.at(), cell.text(), "is no date", "Write it as 2030-02-28");
      return Optional.empty();
    }
  }

  private Optional<String> method(Cell cell, FaultList faults) {
    List<String> ids = methods.methods().stream().map(HoleMethod::id).toList();
    if (!ids.contains(cell.text())) {
      faults.add(
          cell.at(),
          cell.text(),
          "is no known way of placing a hole",
          "Known are " + String.join(", ", ids));
      return Optional.empty();
    }
    return Optional.of(cell.text());
  }

  private static Optional<Length> length(String axis, Cell cell, FaultList faults) {
    try {
      return Optional.of(LengthReader.read(cell.text()));
    } catch (MeasureException e) {
      faults.add(
          cell.at(), cell.text(), "is no error along " + axis, "Write it as 0.12 mm or -0.005 in");
      return Optional.empty();
    }
  }

  @Override
  public String write(List<MeasuredError> errors) {
    StringWriter text = new StringWriter();
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setHeader(COLUMNS.toArray(String[]::new))
            .setRecordSeparator("\n")
            .get();
    try (CSVPrinter printer = new CSVPrinter(text, format)) {
      for (MeasuredError entry : errors) {
        if (entry.counts()) {
          HoleError error = entry.error();
          printer.printRecord(
              error.measured(),
              error.method(),
              GoodsWords.size(error.x()),
              GoodsWords.size(error.y()),
              error.member(),
              error.machine(),
              error.note());
        }
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException("a text in memory could not be written", impossible);
    }
    return text.toString();
  }
}
