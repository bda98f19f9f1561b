package org.fettlebench.fasteners.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.HeadSink;
import org.fettlebench.fasteners.SinkWanted;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.threads.ScrewThread;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;

/** What a head's table says in words, who is told of its faults, and what is noted at a cut. */
class TableWordsTest {
  private static final ScrewThread SIX = HeadTablesTest.thread("M", Length.ofMillimetres(6));

  private final List<Object> told = new ArrayList<>();

  private static Table table(String header, String rows) throws IOException {
    String text =
        "# kind: heads\n# id: club\n# title: t\n# source: s\n# standing: published\n"
            + "# style: domed\n# style-title: domed\n# series: M\n"
            + header
            + rows;
    return TableFile.read("club.csv", "org.example.club", new StringReader(text));
  }

  private Head domed(String header, String row) throws IOException {
    List<Table> tables = new ArrayList<>(HeadTablesTest.shipped());
    tables.add(table(header, "size,major_mm,diameter_mm,note\n" + row));
    HeadTables heads =
        new HeadTables(FixedTables.of(tables), (faulty, fault) -> told.add(fault.getMessage()));
    return heads.find("domed", SIX).orElseThrow(() -> new AssertionError(told.toString()));
  }

  @Test
  void notesOfRowAndTableStandTogether() throws IOException {
    String part = "# part: head\n";
    assertEquals("row; all", domed(part + "# note: all\n", "6,6,11,row\n").note());
    assertEquals("all", domed(part + "# note: all\n", "6,6,11,\n").note());
    assertEquals("row", domed(part, "6,6,11,row\n").note());
    assertEquals("", domed(part, "6,6,11,\n").note());
  }

  @Test
  void refusesAPartThatThereIsNotAndAnAngleThatCannotBe() throws IOException {
    Table odd = table("# part: bolt\n", "size,major_mm,diameter_mm\n6,6,11\n");
    String said = assertThrows(TableFormatException.class, () -> HeadTable.of(odd)).getMessage();
    assertTrue(said.contains("'part: bolt' must be one of head, nut, washer"), said);
    for (String angle : List.of("180", "5", "wide")) {
      Table cone =
          table(
              "# part: head\n# countersunk-degrees: " + angle + "\n",
              "size,major_mm,diameter_mm\n6,6,11\n");
      assertThrows(TableFormatException.class, () -> HeadTable.of(cone), angle);
    }
    Table none = table("# part: head\n", "size,diameter_mm\n6,11\n");
    String missing =
        assertThrows(TableFormatException.class, () -> HeadTable.of(none)).getMessage();
    assertTrue(missing.contains("gives no major_mm, major_in"), missing);
  }

  @Test
  void tellsTheModuleOfAFaultyTable() throws IOException {
    Bundle own = mock(Bundle.class);
    Bundle club = mock(Bundle.class);
    when(own.getSymbolicName()).thenReturn("org.fettlebench.fasteners");
    when(club.getSymbolicName()).thenReturn("org.example.club");
    BundleContext context = mock(BundleContext.class);
    when(context.getBundles()).thenReturn(new Bundle[] {own, club});
    when(context.getBundle()).thenReturn(own);
    Table faulty = table("# part: bolt\n", "size,major_mm,diameter_mm\n6,6,11\n");
    HeadTables heads =
        new HeadTables(
            context,
            FixedTables.of(List.of(faulty)),
            (contribution, doing, cause) -> told.addAll(List.of(contribution, doing)));
    assertEquals(Optional.empty(), heads.find("domed", SIX));
    assertEquals(List.of(club, "reading heads"), told);
    told.clear();
    when(context.getBundles()).thenReturn(new Bundle[] {own});
    new HeadTables(
            context,
            FixedTables.of(List.of(faulty)),
            (contribution, doing, cause) -> told.add(contribution))
        .styles();
    assertEquals(List.of(own), told);
  }

  @Test
  void notesAtACut() {
    List<Table> shipped = HeadTablesTest.shipped();
    HeadTables heads =
        new HeadTables(
            FixedTables.of(shipped),
            (table, fault) -> {
              throw fault;
            });
    SinkService sinks =
        new SinkService(
            FixedTables.of(shipped),
            heads,
            (table, fault) -> {
              throw fault;
            });
    Head cone = heads.find("countersunk", SIX).orElseThrow();
    SinkWanted withWasher = new SinkWanted(Optional.empty(), Length.ZERO, true);
    HeadSink sunk = sinks.of(SIX, cone, withWasher);
    assertTrue(sunk.notes().toString().contains("takes no plain washer"), sunk.notes().toString());
    assertTrue(sunk.notes().get(0).startsWith("no hole was said"), sunk.notes().toString());
    SinkWanted plain = new SinkWanted(Optional.of(SIX.major()), Length.ZERO, false);
    assertFalse(sinks.of(SIX, cone, plain).notes().toString().contains("no hole was said"));
    // A hole as wide as the head lets it through; a hair less and it bears.
    Head cap = heads.find("socket-cap", SIX).orElseThrow();
    SinkWanted through = new SinkWanted(Optional.of(cap.acrossCorners()), Length.ZERO, false);
    assertThrows(MeasureException.class, () -> sinks.of(SIX, cap, through));
    HeadSink washered = sinks.of(SIX, heads.find("hexagon", SIX).orElseThrow(), withWasher);
    assertEquals(2, washered.sources().size());
    assertEquals(12, washered.diameter().millimetres(), 1e-9);
  }
}
