package org.fettlebench.command.internal.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.club.StockLine.Condition;
import org.fettlebench.command.internal.FreshClub;
import org.fettlebench.command.internal.PaperTrade;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChartPrintTest {
  @TempDir Path folder;

  private Session session() {
    Stock stock = mock(Stock.class);
    List<StockLine> lines =
        List.of(3.3, 3.4, 3.96875, 4.1, 4.8, 5.0, 6.6).stream().map(ChartPrintTest::line).toList();
    when(stock.lines()).thenReturn(lines);
    return new Session(new ChartPrint(PaperTrade.WALL_CHARTS, RealTrade.DRILLS, stock))
        .in(folder.toString());
  }

  private static StockLine line(double mm) {
    return new StockLine(
        1,
        FreshClub.drill(mm + " mm", mm),
        "Stand",
        Condition.GOOD,
        1,
        List.of(),
        java.util.Optional.empty());
  }

  @ParameterizedTest
  @CsvSource({"BA ME, a3", "ba, a4", "M UNC BSF, a3"})
  void writesAPdf(String series, String paper) throws IOException {
    Answer answer =
        session().type(("chart print " + series + " --paper " + paper + " --to w.pdf").split(" "));

    assertEquals("", answer.err());
    assertEquals(0, answer.status());
    byte[] pdf = Files.readAllBytes(folder.resolve("w.pdf"));
    assertEquals("%PDF-", new String(pdf, 0, 5, StandardCharsets.US_ASCII));
    String kept = System.getProperty("chart.keep", "");
    if (!kept.isEmpty()) {
      Files.write(Path.of(kept, series.replace(' ', '-') + "-" + paper + ".pdf"), pdf);
    }
  }

  @Test
  void nothingIsWrittenOfAChartThatCannotBe() {
    Answer answer = session().type("chart", "print", "BA", "XYZ", "--to", "w.pdf");

    assertEquals(2, answer.status());
    assertTrue(answer.err().contains("there is no thread series \"XYZ\"; there are BA"));
    assertTrue(Files.notExists(folder.resolve("w.pdf")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "chart print BA|say where the chart goes",
        "chart print BA --to w.pdf --paper a7|say a4 or a3",
        "chart print BA --to /no/such/folder/w.pdf|cannot be written"
      })
  void badInputIsToldWithARemedy(String typed, String told) {
    Answer answer = session().type(typed.split(" "));

    assertEquals(2, answer.status());
    assertTrue(answer.err().contains(told), answer.err());
  }
}
