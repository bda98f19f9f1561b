package org.fettlebench.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@TestInstance(Lifecycle.PER_CLASS)
class DesignationTest {
  private final ThreadRegistry threads = OurThreads.fresh();

  private String found(String typed) {
    return threads.find(typed).map(ScrewThread::designation).orElse("nothing");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "2BA | 2 BA",
        "2 B.A. | 2 BA",
        "2ba | 2 BA",
        "No 2 BA | 2 BA",
        "No. 2 B.A. | 2 BA",
        "no.2 ba | 2 BA",
        "#2 BA | 2 BA",
        "BA 2 | 2 BA",
        "B.A.2 | 2 BA",
        "2-BA | 2 BA",
        "0 BA | 0 BA",
        "10BA | 10 BA",
        "M6 | M6",
        "m6 | M6",
        "M 6 | M6",
        "m6 x 1 | M6",
        "M6x1.0 | M6",
        "M6 × 1 mm | M6",
        "M6-6H | M6",
        "M6 coarse | M6",
        "M2.5 | M2.5",
        "M2,5 | M2.5",
        "M2.5x.45 | M2.5",
        "M6x0.75 | M6 x 0.75",
        "M6 X .75 | M6 x 0.75",
        "M6x0,75 | M6 x 0.75",
        "M6x0.75-6g | M6 x 0.75",
        "M6 x 0.75 - 6H/6g | M6 x 0.75",
        "M6x0.75-5g6g | M6 x 0.75",
        "M6-0.75 | M6 x 0.75",
        "M6*0.75 | M6 x 0.75",
        "M6 0.75 | M6 x 0.75",
        "1/4 20 UNC | 1/4-20 UNC",
        "10 32 UNF | #10-32 UNF",
        "1/4 40 ME | 1/4 x 40 ME",
        "M6 fine | M6 x 0.75",
        "MF M6x0.75 | M6 x 0.75",
        "M10x1.25 | M10 x 1.25",
        "M10 x 1¼ | M10 x 1.25",
        "M6×¾ | M6 x 0.75",
        "M10 x 1½ - 6H | M10",
        "1/4-20 | 1/4-20 UNC",
        "1/4-20 UNC-2B | 1/4-20 UNC",
        "1/4-20UNC2A | 1/4-20 UNC",
        "1/4 UNC | 1/4-20 UNC",
        "UNC 1/4 | 1/4-20 UNC",
        "1/4\"-20 UNC | 1/4-20 UNC",
        "1/4 - 20 U.N.C. | 1/4-20 UNC",
        "1/4-20 NC | 1/4-20 UNC",
        "1/4-28 UNF | 1/4-28 UNF",
        "1/4-28-2B | 1/4-28 UNF",
        "¼-20 | 1/4-20 UNC",
        "1-8 UNC | 1-8 UNC",
        "1 UNC | 1-8 UNC",
        "#1 UNC | #1-64 UNC",
        "1-64 | #1-64 UNC",
        "1 1/8-7 UNC | 1 1/8-7 UNC",
        "1-1/8-7 UNC | 1 1/8-7 UNC",
        "#10-32 | #10-32 UNF",
        "10-32 | #10-32 UNF",
        "10-32 UNF | #10-32 UNF",
        "No. 10-32 | #10-32 UNF",
        "No 10 UNF | #10-32 UNF",
        "number 4-40 | #4-40 UNC",
        "10 UNC | #10-24 UNC",
        "3/16 BSW | 3/16 BSW",
        "3/16 Whit | 3/16 BSW",
        "3/16 W | 3/16 BSW",
        "3/16\" Whitworth | 3/16 BSW",
        "3/16 in. B.S.W. | 3/16 BSW",
        "BSW 3/16 | 3/16 BSW",
        "3/16-24 BSW | 3/16 BSW",
        "6/32 BSW | 3/16 BSW",
        "1 1/2 BSW | 1 1/2 BSW",
        "1½ BSW | 1 1/2 BSW",
        "1/4 BSF | 1/4 BSF",
        "1/4in BSF | 1/4 BSF",
        "1/4 x 26 BSF | 1/4 BSF",
        "1/4 x 40 ME | 1/4 x 40 ME",
        "1/4x40 | 1/4 x 40 ME",
        "1/4-40 ME | 1/4 x 40 ME",
        "1/4 by 40 ME | 1/4 x 40 ME",
        "1/4 x 40 tpi M.E. | 1/4 x 40 ME",
        "1/4\" x 40 Model Engineer | 1/4 x 40 ME",
        "ME 1/4 x 40 | 1/4 x 40 ME",
        "5/16 x 32 ME | 5/16 x 32 ME",
        "5/32 ME | 5/32 x 40 ME",
        "1/4 x 26 BSB | 1/4 BSB",
        "1/4 BSB | 1/4 BSB",
        "1/4 brass | 1/4 BSB",
        "1/4 x 20 | 1/4 BSW",
        "G1/8 | G 1/8",
        "G 1/8 | G 1/8",
        "g1/8 | G 1/8",
        "1/8 BSP | G 1/8",
        "G 1 1/4 | G 1 1/4",
        "G 1.1/4 | G 1 1/4",
        "G1.1/4 A | G 1 1/4",
        "1.1/8 BSW | 1 1/8 BSW",
        "G1/8A | G 1/8",
        "G 1 1/4 - B | G 1 1/4",
        "1/4 BSF 26 tpi | 1/4 BSF",
        "1/4 ME 40 | 1/4 x 40 ME",
        "3/8 ME 32 tpi | 3/8 x 32 ME",
        "MF 6 x 0.75 | M6 x 0.75",
        ".250-20 UNC-2A | 1/4-20 UNC",
        "0.190-32 | #10-32 UNF"
      })
  void findsTheUsualWaysOfWriting(String typed, String designation) {
    assertEquals(designation, found(typed));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "BA",
        "26 BA",
        "M6.5",
        "M6x0.33",
        "1/4-21",
        "1/4",
        "22",
        "3/8 ME",
        "M8 fine",
        "-",
        "x",
        "2",
        "3/0 BSW",
        "1/4 x 40 ME left hand",
        "§§§",
        "#",
        "...",
        "2 BA 2 BA"
      })
  void findsNothingWhereNothingOrTooMuchFits(String typed) {
    assertEquals("nothing", found(typed));
  }

  /** The hand and the length are told, or the text is not understood: never dropped. */
  @ParameterizedTest
  @CsvFileSource(resources = "/designations.csv", delimiter = '|', quoteCharacter = '~')
  void readsWhatIsWrittenAroundAThread(
      String typed, String designation, String threadClass, String hand, String length) {
    Optional<ThreadCall> call = threads.read(typed);
    assertEquals(
        String.join("|", designation, shown(threadClass), shown(hand), shown(length)),
        call.map(
                read ->
                    String.join(
                        "|",
                        read.thread().designation(),
                        read.threadClass().orElse(""),
                        read.leftHand() ? "LH" : "",
                        read.length().map(Length::toString).orElse("")))
            .orElse("nothing|||"));
    assertEquals(
        call.filter(read -> !read.leftHand() && read.length().isEmpty()).map(ThreadCall::thread),
        threads.find(typed));
  }

  private String shown(String cell) {
    return cell == null ? "" : cell;
  }

  @Test
  void findsNothingInAnEndlessText() {
    assertEquals("nothing", found("1".repeat(100_000)));
    assertEquals(List.of(), threads.near("M".repeat(100_000), 5));
  }

  @Test
  void everyThreadIsFoundByItsDesignation() {
    threads.series().stream()
        .flatMap(series -> series.threads().stream())
        .forEach(
            thread ->
                assertEquals(
                    Optional.of(thread), threads.find(thread.designation()), thread.designation()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"M6 0", "M1 6", "1 6 BA", "1/2 2 BSF"})
  void figuresThatStandApartAreNotOne(String typed) {
    assertEquals(Optional.empty(), threads.find(typed));
  }

  @ParameterizedTest
  @CsvSource({
    "26 BA, 6 BA",
    "M6.5, M6",
    "1/4-21 UNC, 1/4-20 UNC",
    "3/8 ME, 3/8 x 40 ME",
    "3/8 ME, 3/8 x 32 ME",
    "M8 fine, M8 x 1",
    "M8 fine, M8 x 0.75",
    "5/16 x 36 ME, 5/16 x 32 ME",
    "2 BAA, 2 BA",
    "7/16 BFS, 7/16 BSF",
    "#4, #4-48 UNF",
    "10/32, #10-32 UNF",
    "1/4/20, 1/4-20 UNC"
  })
  void namesWhatMayHaveBeenMeant(String typed, String among) {
    List<String> near = threads.near(typed, 6).stream().map(ScrewThread::designation).toList();
    assertTrue(near.contains(among), near.toString());
  }

  @Test
  void namesTheClosestFirstAndNoMoreThanAsked() {
    assertEquals("M6", threads.near("M6", 3).get(0).designation());
    assertEquals(3, threads.near("M6", 3).size());
    assertEquals(List.of(), threads.near("quite another thing", 5));
    assertEquals(List.of(), threads.near(" ", 5));
    assertEquals(List.of(), threads.near("M6", 0));
    assertThrows(IllegalArgumentException.class, () -> threads.near("M6", -1));
  }

  @Test
  void countsChangedLetters() {
    assertEquals(0, NearMisses.changes("m6", "m6"));
    assertEquals(3, NearMisses.changes("kitten", "sitting"));
    assertEquals(4, NearMisses.changes("", "4ba1"));
  }
}
