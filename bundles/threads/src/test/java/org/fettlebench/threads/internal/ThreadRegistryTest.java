package org.fettlebench.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThreadRegistryTest {
  private final ThreadRegistry threads = OurThreads.fresh();

  private static final String CLUB =
      """
      # kind: thread-series
      # id: FINE32
      # title: Our 32 threads per inch
      # source: club drawing 14
      # standing: measured by the club
      # form: whitworth
      # designation: {size} x {tpi} FINE32
      # aliases: Club fine
      # limits: BS 84
      size,major_in,tpi
      1/4,1/4,32
      5/16,5/16,32
      """;

  private final List<String> reported = new ArrayList<>();

  private Table table(String text) {
    try {
      return TableFile.read("club.csv", "org.example.club", new StringReader(text));
    } catch (IOException impossible) {
      throw new AssertionError(impossible);
    }
  }

  private ThreadRegistry registry(Tables tables) {
    return new ThreadRegistry(tables, (table, fault) -> reported.add(fault.getMessage()));
  }

  private ThreadRegistry withClub(String... texts) {
    List<Table> all = new ArrayList<>(OurThreads.TABLES.all());
    for (String text : texts) {
      all.add(table(text));
    }
    return registry(FixedTables.of(all));
  }

  @Test
  void listsTheShippedSeriesInTheirOrder() {
    assertEquals(
        List.of("BA", "ME", "BSB", "BSW", "BSF", "M", "MF", "UNC", "UNF", "UNEF", "G"),
        threads.series().stream().map(ThreadSeries::id).toList());
  }

  @Test
  void addsASeriesOfAClubBehindItsOwn() {
    ThreadRegistry threads = withClub(CLUB);
    ThreadSeries last = threads.series().get(threads.series().size() - 1);
    assertEquals("FINE32", last.id());
    assertEquals("org.example.club", last.module());
    assertEquals(Standing.MEASURED, last.source().standing());
    for (String typed :
        List.of("1/4 x 32 FINE32", "fine32 1/4", "1/4 Club Fine", "1/4-32 fine32", "1/4 FINE32")) {
      assertEquals(
          Optional.of("1/4 x 32 FINE32"), threads.find(typed).map(ScrewThread::designation), typed);
    }
    ScrewThread thread = threads.find("1/4 x 32 FINE32").orElseThrow();
    assertTrue(threads.minorOfNut(thread).isPresent());
    assertEquals(List.of(), reported);
  }

  @Test
  void theSuitesOwnSeriesComesFirstWhereBothWriteAlike() {
    ThreadRegistry threads = withClub(CLUB.replace("{size} x {tpi} FINE32", "{size} x {tpi} ME"));
    assertEquals("ME", threads.find("5/16 x 32 ME").orElseThrow().series());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "# form: whitworth | # form: whitwurth | must be one of: iso, unified, whitworth",
        "# form: whitworth | ## no form | the header has no line '# form: ...'",
        "{size} x {tpi} FINE32 | {tpi} FINE32 | must hold {size}",
        "5/16,5/16,32 | 1/4,5/16,32 | line 12: size '1/4' is there twice",
        "5/16,5/16,32 | 5/16,5/16,0 | line 12: column tpi: 0 must be above 0",
        "5/16,5/16,32 | 5/16,5/16,many | column tpi: 'many' is no number",
        "5/16,5/16,32 | 5/16,,32 | a figure is missing under major_mm or major_in",
        "5/16,5/16,32 | 5/16,5/16, | a figure is missing under tpi or pitch_mm",
        "5/16,5/16,32 | 5/16,-5/16,32 | must rise in this order",
        "5/16,5/16,32 | 5/16,1/32,32 | must rise in this order",
        "# limits: BS 84 | # order: first | must be a whole number"
      })
  void leavesOutAFaultySeriesAndSaysWhy(String good, String bad, String said) {
    ThreadRegistry threads = withClub(CLUB.replace(good, bad));
    assertEquals(11, threads.series().size());
    assertEquals(1, reported.size());
    assertTrue(reported.get(0).contains(said), reported.get(0));
    assertTrue(threads.find("2 BA").isPresent());
  }

  @Test
  void namesAllFaultsOfASeriesAtOnce() {
    withClub(CLUB.replace("1/4,1/4,32", "1/4,x,32").replace("5/16,5/16,32", "5/16,5/16,-1"))
        .series();
    assertTrue(reported.get(0).contains("line 11") && reported.get(0).contains("line 12"));
  }

  @Test
  void leavesOutFaultyLimits() {
    ThreadRegistry threads =
        withClub(
            """
            # kind: thread-limits
            # id: ours
            # title: ours
            # source: us
            # standing: measured by the club
            class,pitch_mm,tolerance_mm
            6H,1,wide
            """);
    assertTrue(threads.minorOfNut(threads.find("M6").orElseThrow()).isPresent());
    assertEquals(1, reported.size());
  }

  @Test
  void followsTheTablesAsTheyComeAndGo() {
    List<Table> current = new ArrayList<>(OurThreads.TABLES.all());
    long[] revision = {1};
    Tables changing =
        new Tables() {
          @Override
          public List<Table> ofKind(String kind) {
            return current.stream().filter(table -> table.kind().equals(kind)).toList();
          }

          @Override
          public List<Table> all() {
            return List.copyOf(current);
          }

          @Override
          public long revision() {
            return revision[0];
          }
        };
    ThreadRegistry threads = registry(changing);
    assertSame(threads.series(), threads.series());
    current.add(table(CLUB));
    revision[0]++;
    assertTrue(threads.find("1/4 FINE32").isPresent());
    current.remove(current.size() - 1);
    revision[0]++;
    assertTrue(threads.find("1/4 FINE32").isEmpty());
  }
}
