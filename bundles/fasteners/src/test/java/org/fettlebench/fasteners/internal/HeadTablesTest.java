package org.fettlebench.fasteners.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fettlebench.fasteners.Head;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;
import org.junit.jupiter.api.Test;

class HeadTablesTest {
  private static final Path TABLES = Path.of("src/main/resources/FETTLEBENCH/tables");

  private static final List<Table> SHIPPED = shipped();

  private final List<String> faults = new ArrayList<>();
  private final HeadTables heads = heads(SHIPPED);

  @Test
  void namesTheHeadAfterTheThreadAsked() {
    Head head = heads.find("small-hexagon", thread("BA", Length.ofMillimetres(4.7))).orElseThrow();

    assertEquals("test BA hexagon one size smaller", head.title());
    assertEquals(Standing.FROM_MEMORY, head.source().standing());
    assertTrue(head.note().contains("hexagon of 3 BA"), head.note());
    assertTrue(head.note().contains("cos 30°"), head.note());
  }

  @Test
  void hexagonsBelowTheListGoByRule() {
    Head head = heads.find("hexagon", thread("BA", Length.ofMillimetres(0.79))).orElseThrow();

    assertEquals(1.75 * 0.79, head.acrossFlats().orElseThrow().millimetres(), 0.005);
    assertEquals(Standing.RULE, head.source().standing());
  }

  @Test
  void ofAThreadWithoutTableThereIsNoHead() {
    assertEquals(Optional.empty(), heads.find("hexagon", thread("ME", Length.ofInches(0.25))));
    assertEquals(Optional.empty(), heads.find("hexagon", thread("M", Length.ofMillimetres(6.2))));
    assertEquals(Optional.empty(), heads.find("domed", thread("M", Length.ofMillimetres(6))));
  }

  @Test
  void listsEveryStyleOnceAndAllHeadsOfAThread() {
    List<String> ids = heads.styles().stream().map(style -> style.id()).toList();

    assertEquals(ids.stream().distinct().toList(), ids);
    assertEquals(
        Stream.of(
                "hexagon",
                "hexagon-nut",
                "lock-nut",
                "socket-cap",
                "cheese",
                "countersunk",
                "socket-countersunk",
                "washer")
            .sorted()
            .toList(),
        heads.forThread(thread("MF", Length.ofMillimetres(6))).stream()
            .map(Head::style)
            .sorted()
            .toList());
  }

  @Test
  void noHexagonIsWiderAcrossFlatsThanCornersAndBiggerThreadsHaveBiggerHexagons() {
    for (String series : List.of("BA", "BSW", "M", "UNC")) {
      double before = 0;
      for (int hundredths = 20; hundredths < 3000; hundredths++) {
        Optional<Head> head =
            heads.find("hexagon", thread(series, Length.ofMillimetres(hundredths / 100.0)));
        if (head.isPresent()) {
          double flats = head.get().acrossFlats().orElseThrow().millimetres();
          assertTrue(flats >= before, series + " at " + hundredths / 100.0 + " mm");
          assertTrue(head.get().acrossCorners().millimetres() > 1.14 * flats, head.toString());
          before = flats;
        }
      }
      assertTrue(before > 0, series);
    }
  }

  @Test
  void aFaultyTableIsReportedAndSpoilsNoOther() throws IOException {
    String text =
        "# kind: heads\n# id: club\n# title: Club\n# source: club\n# standing: published\n"
            + "# style: hexagon\n# style-title: hexagon\n# part: head\n# series: CLUB\n"
            + "size,major_mm,across_flats_mm,across_corners_mm\n"
            + "5,5,8,7\n"
            + "6,6,-1,\n"
            + "7,7,,\n";
    List<Table> tables = new ArrayList<>(SHIPPED);
    tables.add(0, TableFile.read("club.csv", "club", new StringReader(text)));

    HeadTables withClub = heads(tables);

    assertTrue(withClub.find("hexagon", thread("M", Length.ofMillimetres(6))).isPresent());
    assertEquals(1, faults.size());
    assertTrue(
        faults.get(0).contains("line 11: has across corners below across flats"), faults.get(0));
    assertTrue(faults.get(0).contains("line 12: column across_flats: -1 mm"), faults.get(0));
    assertTrue(faults.get(0).contains("line 13: gives neither"), faults.get(0));
  }

  private HeadTables heads(List<Table> tables) {
    return new HeadTables(FixedTables.of(tables), (table, fault) -> faults.add(fault.getMessage()));
  }

  static List<Table> shipped() {
    try (Stream<Path> files = Files.list(TABLES)) {
      List<Table> tables = new ArrayList<>();
      for (Path file : files.sorted().toList()) {
        tables.add(TableFile.read(file.toString(), "shipped", Files.newBufferedReader(file)));
      }
      return tables;
    } catch (IOException unreadable) {
      throw new java.io.UncheckedIOException(unreadable);
    }
  }

  static ScrewThread thread(String series, Length major) {
    Source source = new Source("a test", Standing.PUBLISHED);
    return new ScrewThread(
        series,
        "test",
        "test " + series,
        ThreadForm.ISO,
        major,
        Length.ofMillimetres(0.1),
        Optional.empty(),
        major.minus(Length.ofMillimetres(0.05)),
        major.minus(Length.ofMillimetres(0.1)),
        major.minus(Length.ofMillimetres(0.11)),
        source);
  }
}
