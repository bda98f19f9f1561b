package org.fettlebench.sample.club;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.junit.jupiter.api.Test;

class ClubSeriesTest {
  private static final String FILE = "/FETTLEBENCH/tables/club-36.csv";

  private static Table table() throws Exception {
    try (Reader text =
        new InputStreamReader(
            ClubSeriesTest.class.getResourceAsStream(FILE), StandardCharsets.UTF_8)) {
      return TableFile.read(FILE, "org.fettlebench.sample.club", text);
    }
  }

  @Test
  void theTableIsASeriesOfThreads() throws Exception {
    ThreadRegistry threads =
        new ThreadRegistry(
            FixedTables.of(List.of(table())),
            (table, fault) -> {
              throw fault;
            });
    ScrewThread thread = threads.find("1/4 x 36 SC").orElseThrow();
    // Worked by hand: 1/4 in is 6.35 mm, 1/36 in is 0.705556 mm, Whitworth depth 0.640327 pitch.
    assertEquals(6.35, thread.major().millimetres(), 0.0000005);
    assertEquals(25.4 / 36, thread.pitch().millimetres(), 0.0000005);
    assertEquals(6.35 - 0.640327 * 25.4 / 36, thread.effective().millimetres(), 0.000001);
    assertEquals(6, threads.series().get(0).threads().size());
  }
}
