package org.fettlebench.tooling.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.tooling.DrillSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(OurTooling.Fresh.class)
class DrillRegistryTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "No 22 | No 22 | 3.9878",
        "no22 | No 22 | 3.9878",
        "No. 22 | No 22 | 3.9878",
        "#22 | No 22 | 3.9878",
        "number 22 | No 22 | 3.9878",
        "F | F | 6.5278",
        "f | F | 6.5278",
        "letter F | F | 6.5278",
        "E | 1/4 in | 6.35",
        "5/32 | 5/32 in | 3.96875",
        "5/32 in | 5/32 in | 3.96875",
        "5/32\" | 5/32 in | 3.96875",
        "10/64 | 5/32 in | 3.96875",
        "0.25 in | 1/4 in | 6.35",
        "1 in | 1 in | 25.4",
        "4.1 mm | 4.1 mm | 4.1",
        "4.1mm | 4.1 mm | 4.1",
        "4,1 mm | 4.1 mm | 4.1",
        "4 mm | 4.0 mm | 4",
        "0.22 mm | 0.22 mm | 0.22",
        "12.7 mm | 1/2 in | 12.7",
        "157 thou | No 22 | 3.9878",
        "4.17 mm | 4.17 mm | 4.17"
      })
  void findsADrillByNameAndBySize(String typed, String name, double mm) {
    DrillSize drill = OurTooling.drills().find(typed).orElseThrow();
    assertEquals(name, drill.name());
    assertEquals(mm, drill.diameter().millimetres(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "22",
        "4.1",
        ".157",
        "1",
        "No 98",
        "No 0",
        "AA",
        "",
        " ",
        "-5/32",
        "0 mm",
        "-4 mm",
        "5/0",
        "letter 5",
        "4.1 furlongs",
        "#",
        "No"
      })
  void findsNothingWhereTheNameSaysTooLittle(String typed) {
    assertEquals(Optional.empty(), OurTooling.drills().find(typed));
  }

  @Test
  void mergesTheNamesOfOneSize() {
    assertEquals(List.of("1/4 in", "E"), OurTooling.drill("E").names());
    assertEquals(List.of("1/2 in", "12.7 mm"), OurTooling.drill("1/2").names());
  }

  @Test
  void listsEverySizeOnceAndRising() {
    List<DrillSize> all = OurTooling.drills().catalogue();
    for (int i = 1; i < all.size(); i++) {
      assertTrue(all.get(i - 1).compareTo(all.get(i)) < 0);
    }
    // 281 metric (230 of BS 328), 64 fractions, 97 numbers, 26 letters; the rest share a size.
    int names = all.stream().mapToInt(drill -> drill.names().size()).sum();
    assertEquals(281 + 64 + 97 + 26, names);
    assertThrows(UnsupportedOperationException.class, () -> all.remove(0));
  }

  @Test
  void everyDrillIsFoundByEachOfItsNames() {
    for (DrillSize drill : OurTooling.drills().catalogue()) {
      for (String name : drill.names()) {
        assertEquals(Optional.of(drill), OurTooling.drills().find(name), name);
      }
    }
  }

  @Test
  void namesTheNearestSizes() {
    List<String> near =
        OurTooling.drills().near(Length.ofMillimetres(3.97), 3).stream()
            .map(DrillSize::name)
            .toList();
    assertEquals(List.of("5/32 in", "No 22", "4.0 mm"), near);
    assertEquals(List.of(), OurTooling.drills().near(Length.ofMillimetres(3.97), 0));
    assertThrows(
        IllegalArgumentException.class,
        () -> OurTooling.drills().near(Length.ofMillimetres(1), -1));
  }

  static LongStream seeds() {
    return LongStream.range(1, 21);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void nothingLeftOutIsNearerThanWhatIsNamed(long seed) {
    Length wanted = Length.ofMillimetres(0.1 + 30 * new Random(seed).nextDouble());
    List<DrillSize> near = OurTooling.drills().near(wanted, 5);
    Length furthest =
        near.stream().map(d -> d.diameter().minus(wanted).abs()).max(Length::compareTo).get();
    assertTrue(
        OurTooling.drills().catalogue().stream()
            .filter(drill -> !near.contains(drill))
            .allMatch(drill -> drill.diameter().minus(wanted).abs().compareTo(furthest) >= 0),
        "seed " + seed);
  }

  @Test
  void refusesADrillOfNoDiameter() {
    assertThrows(MeasureException.class, () -> OurTooling.drills().ofDiameter(Length.ZERO));
    assertThrows(MeasureException.class, () -> new DrillSize(Length.ofMillimetres(1), List.of()));
  }

  @Test
  void addsAClubsDrillsAndLeavesOutFaultyOnes() throws IOException {
    List<String> reported = new ArrayList<>();
    List<Table> tables = new ArrayList<>(OurTooling.TABLES.all());
    tables.add(table("jets", "Jet 5,0.25\nJet 8,0.36"));
    tables.add(table("bare", "12,0.25\nJet 9,0"));
    DrillRegistry drills =
        new DrillRegistry(FixedTables.of(tables), (t, fault) -> reported.add(fault.getMessage()));
    assertEquals(List.of("0.25 mm", "Jet 5"), drills.find("jet5").orElseThrow().names());
    assertEquals(1, reported.size());
    assertTrue(reported.get(0).contains("name '12' is a bare number"), reported.get(0));
    assertTrue(reported.get(0).contains("diameter 0 mm must be above 0 mm"), reported.get(0));
  }

  private static Table table(String id, String rows) throws IOException {
    return TableFile.read(
        id,
        "org.example.club",
        new StringReader(
            "# kind: drills\n# id: %s\n# title: t\n# source: s\n# standing: published\nname,diameter_mm\n%s\n"
                .formatted(id, rows)));
  }
}
