package org.fettlebench.desktop.kits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.Mockito.doAnswer;
import static org.mockito.Mockito.doThrow;
import static org.mockito.Mockito.mock;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.desktop.widgets.trial.Windowed;
import org.fettlebench.kits.KitReport;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.paper.BenchCards;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PapersTest {
  private final BenchCards cards = mock(BenchCards.class);
  private final List<Path> opened = new ArrayList<>();
  private final KitReport report =
      Club.demo().book().look(Club.DEMO, KitBook.Shown.EMPTY).report().orElseThrow();

  @Test
  void writesACardInTheChosenUnitAndOpensIt(@TempDir Path folder) throws IOException {
    doAnswer(
            call -> {
              OutputStream pdf = call.getArgument(3);
              pdf.write("card".getBytes(StandardCharsets.UTF_8));
              return null;
            })
        .when(cards)
        .jointCard(eq(report), eq(report.joints().get(0)), eq(LengthUnit.INCH), any());
    Path file = folder.resolve("card.pdf");
    Windowed.run(
        "paper",
        desk -> {
          desk.unit(LengthUnit.INCH);
          new Papers(desk, () -> Optional.of(cards), opened::add)
              .card(report, report.joints().get(0), file);
          assertEquals(List.of(file), opened);
          assertEquals("card", read(file));
        });
  }

  @Test
  void leavesNoHalfFileWhenItCannotBeWritten(@TempDir Path folder) throws IOException {
    doThrow(new IOException("no lettering")).when(cards).kitReport(any(), any(), any());
    Path file = folder.resolve("report.pdf");
    Windowed.run(
        "paper-fails",
        desk -> {
          Papers papers = new Papers(desk, () -> Optional.of(cards), opened::add);
          assertThrows(IllegalStateException.class, () -> papers.report(report, file));
          assertFalse(Files.exists(file));
          assertEquals(List.of(), opened);
        });
  }

  @Test
  void saysWhenNothingWritesCards() {
    Windowed.run(
        "paper-none",
        desk -> {
          new Papers(desk, Optional::empty, opened::add).report(report);
          assertEquals(1, desk.complaints().size());
        });
  }

  @ParameterizedTest
  @CsvSource({"'bearing cap, near', bearing-cap-near.pdf", "'3/8 x 32', 3-8-x-32.pdf"})
  void namesFilesAsEverySystemTakesThem(String name, String file) {
    assertEquals(file, Papers.fileName(name));
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
