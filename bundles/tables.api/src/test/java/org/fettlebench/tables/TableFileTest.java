package org.fettlebench.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TableFileTest {
  private static final String HEADER =
      """
      # kind: thread-series
      # id: CLUB36
      # title: Club 36 tpi
      # source: Club minute book, March
      # standing: measured by the club
      """;

  private static Table read(String text) throws IOException {
    return TableFile.read("club.csv", "club.series", new StringReader(text));
  }

  private static List<String> faults(String text) {
    return assertThrows(TableFormatException.class, () -> read(text)).faults();
  }

  @Test
  void readsHeaderRowsAndTheirSources() {
    Table table = FixedTables.fromResources(TableFileTest.class, "/tables/ba.csv").all().get(0);
    assertEquals("thread-series", table.kind());
    assertEquals("BA", table.id());
    assertEquals("British Association", table.title());
    assertEquals(Map.of("form", "british-association"), table.header());
    assertEquals("british-association", table.requiredHeader("form"));
    assertEquals("org.fettlebench.tables", table.module());
    assertEquals(Standing.PUBLISHED, table.source().standing());
    assertEquals(List.of(10, 11, 12), table.rows().stream().map(Table.Row::line).toList());
    Table.Row two = table.rows().get(1);
    assertEquals("\"two\", common", two.requiredText("note"));
    assertEquals(Length.ofMillimetres(4.7), two.requiredLength("major_mm"));
    assertEquals(Length.ofInches(0.185), two.requiredLength("major_in"));
    assertEquals(table.source(), two.source());
    Table.Row nine = table.rows().get(2);
    assertEquals(Optional.empty(), nine.length("major_in"));
    assertEquals(new Source("rounded by the rule of the series", Standing.RULE), nine.source());
  }

  @Test
  void findsTablesByKindAndId() {
    Tables tables = FixedTables.fromResources(TableFileTest.class, "/tables/ba.csv");
    assertEquals(1, tables.ofKind("thread-series").size());
    assertTrue(tables.find("thread-series", "BA").isPresent());
    assertTrue(tables.find("thread-series", "BSW").isEmpty());
    assertTrue(tables.ofKind("drills").isEmpty());
  }

  @Test
  void takesEveryStandingAndTheMarkSomeEditorsPutFirst() throws IOException {
    for (Standing standing : Standing.values()) {
      String text = HEADER.replace("measured by the club", standing.words()) + "a\n1\n";
      assertEquals(standing, read("\ufeff" + text).source().standing());
    }
  }

  @Test
  void readsBothKindsOfLineEnd() throws IOException {
    assertEquals(
        "1", read((HEADER + "a,b\n1,\n").replace("\n", "\r\n")).rows().get(0).requiredText("a"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"kind", "id", "title", "source", "standing"})
  void refusesATableWithoutWhatItMustSay(String key) {
    String without = HEADER.replaceAll("(?m)^# " + key + ":.*\n", "") + "a\n1\n";
    assertEquals(
        List.of("the header has no '" + key + "': add a line '# " + key + ": ...'"),
        faults(without));
    String blank = HEADER.replaceAll("(?m)^# " + key + ":.*\n", "# " + key + ":\n") + "a\n1\n";
    assertTrue(faults(blank).get(0).endsWith("'" + key + "' has no value: give it one"));
  }

  @Test
  void findsAllFaultsOfAFileAtOnce() {
    String text =
        HEADER.replace("measured by the club", "certain")
            + "# form\n# id: CLUB40\na,b,,a,standing\n1,2\n1,\"2,3,4,5\n1,2,3,4,sure\n";
    assertEquals(
        List.of(
            "line 6: '# form' must be '# key: value', or '## ...' for a remark",
            "line 7: 'id' is given twice: leave one out",
            "'standing: certain' must be one of: published; by rule; measured by the club;"
                + " common practice, no source; from memory",
            "line 8: a column has no name: give it one",
            "line 8: column 'a' is there twice: rename one",
            "line 9: 2 cells stand under 5 columns: add or take out commas, or quote a cell with"
                + " one",
            "line 10: a quote is not closed, or stands inside a cell: mend it",
            "line 11: column standing: 'sure' must be one of: published; by rule; measured by the"
                + " club; common practice, no source; from memory"),
        faults(text));
  }

  @Test
  void refusesATableWithoutRowsOrColumns() {
    assertEquals(List.of("there is no line of column names under the header"), faults(HEADER));
    assertEquals(List.of("there are no rows under the column names"), faults(HEADER + "a,b\n"));
    assertEquals(6, faults("").size());
  }

  @Test
  void namesTheFileInItsMessage() {
    var refused = assertThrows(TableFormatException.class, () -> read(HEADER));
    assertTrue(refused.getMessage().startsWith("club.csv: there is no"), refused.getMessage());
  }

  private static Table.Row row(String column, String cell) throws IOException {
    return read(HEADER + column + ",x\n\"" + cell.replace("\"", "\"\"") + "\",1\n").rows().get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "major_in, 1 3/8, 34925000",
    "major_in, 5/32, 3968750",
    "major_in, .25, 6350000",
    "major_mm, 4.7, 4700000",
    "allowance_mm, -0.02, -20000"
  })
  void readsLengthsInTheUnitOfTheColumn(String column, String cell, long nanometres)
      throws IOException {
    assertEquals(nanometres, row(column, cell).requiredLength(column).nanometres());
  }

  @ParameterizedTest
  @CsvSource({"major_in, 3 mm", "major_mm, 1/8", "major_mm, abc", "major_in, 3/0", "major_in, 1\""})
  void refusesCellsThatAreNoLengthWithLineAndColumn(String column, String cell) throws IOException {
    Table.Row row = row(column, cell);
    var refused = assertThrows(TableFormatException.class, () -> row.length(column));
    assertTrue(
        refused.getMessage().startsWith("line 7: column " + column + ": '" + cell),
        refused.getMessage());
  }

  @Test
  void readsNumbersAndRefusesWhatIsNone() throws IOException {
    assertEquals(new BigDecimal("26"), row("tpi", "26").requiredNumber("tpi"));
    assertEquals(new BigDecimal("-0.5"), row("tpi", "-0.5").requiredNumber("tpi"));
    for (String wrong : List.of("NaN", "1e5", "1,5", "1.2.3", "x")) {
      Table.Row row = row("tpi", wrong);
      var refused = assertThrows(TableFormatException.class, () -> row.number("tpi"));
      assertTrue(refused.getMessage().contains("line 7: column tpi: '" + wrong + "' is no number"));
    }
  }

  @Test
  void saysWhatIsMissing() throws IOException {
    Table table = read(HEADER + "a,b\n1,\n");
    Table.Row row = table.rows().get(0);
    for (String column : List.of("b", "c_mm")) {
      var refused = assertThrows(TableFormatException.class, () -> row.requiredText(column));
      assertTrue(
          refused.getMessage().startsWith("line 7: column " + column + ": the cell is blank"));
    }
    assertThrows(TableFormatException.class, () -> row.requiredLength("c_mm"));
    assertThrows(TableFormatException.class, () -> row.requiredNumber("b"));
    assertThrows(IllegalArgumentException.class, () -> row.length("a"));
    assertThrows(TableFormatException.class, () -> table.requiredHeader("form"));
    assertThrows(
        IllegalArgumentException.class, () -> FixedTables.fromResources(getClass(), "none.csv"));
  }
}
