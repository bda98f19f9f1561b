package org.fettlebench.desktop.widgets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.fettlebench.desktop.widgets.trial.Windowed;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ListPrinterTest {
  @TempDir Path folder;

  @Test
  void aLongListIsPrintedOnSeveralSheets() {
    Windowed.run(
        "print",
        desk -> {
          Optional<PrinterData> toFile =
              Arrays.stream(Printer.getPrinterList())
                  .filter(printer -> printer.driver.contains("File"))
                  .findFirst();
          Assumptions.assumeTrue(toFile.isPresent(), "this system cannot print to a file");
          PrinterData printer = toFile.get();
          printer.printToFile = true;
          printer.fileName = folder.resolve("list.pdf").toUri().toString();
          List<List<String>> rows =
              IntStream.range(0, 200).mapToObj(i -> List.of("2 BA hexagon " + i, "12")).toList();
          ListPrinter list =
              new ListPrinter("Stock", List.of("Name", "Held"), rows, List.of(false, true));
          String family = desk.look().text().getFontData()[0].getName();
          assertEquals(4, list.printOn(printer, family), 1, "about 60 rows on a sheet");
          desk.until("the sheets are written", () -> size(written()) > 1_000);
          keep(written(), "list.pdf");
        });
  }

  @Test
  void aDrawingStandsAboveTheRowsOfTheFirstSheet() {
    Windowed.run(
        "print",
        desk -> {
          Optional<PrinterData> toFile =
              Arrays.stream(Printer.getPrinterList())
                  .filter(printer -> printer.driver.contains("File"))
                  .findFirst();
          Assumptions.assumeTrue(toFile.isPresent(), "this system cannot print to a file");
          PrinterData printer = toFile.get();
          printer.printToFile = true;
          printer.fileName = folder.resolve("list.pdf").toUri().toString();
          List<List<String>> rows =
              IntStream.range(0, 45).mapToObj(i -> List.of("row " + i, "12")).toList();
          String family = desk.look().text().getFontData()[0].getName();
          ListPrinter list =
              new ListPrinter("2 BA", List.of("Name", "mm"), rows, List.of(false, true));
          assertEquals(1, list.printOn(printer, family));
          desk.until("the sheet is written", () -> size(written()) > 1_000);
          keep(written(), "undrawn.pdf");
          list.under(Optional.of(GalleryTest.drawing()));
          assertEquals(2, list.printOn(printer, family), "the drawing takes room for rows");
          desk.until("the sheets are written", () -> size(written()) > 1_000);
          keep(written(), "drawn.pdf");
        });
  }

  /** GTK prints to the name it is given, or in some versions to one of its own here. */
  private Path written() {
    Path asked = folder.resolve("list.pdf");
    return Files.exists(asked) ? asked : Path.of("output.pdf");
  }

  private static void keep(Path sheets, String name) {
    try {
      Path kept = Windowed.folder().resolve(name);
      Files.move(sheets, kept, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  private static long size(Path file) {
    try {
      return Files.exists(file) ? Files.size(file) : 0;
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }
}
