package org.fettlebench.club.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Movement;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.store.derby.internal.DerbyStoreEngine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A suite that is killed while it writes: what it acknowledged is there afterwards. */
class KilledWriterTest {
  private static final int ACKNOWLEDGED_BEFORE_KILL = 120;

  @TempDir Path data;

  @Test
  void everyAcknowledgedMovementSurvivesAKill() throws Exception {
    Map<Long, String> acknowledged = new HashMap<>();
    for (int life = 0; life < 2; life++) {
      runAndKill(acknowledged);
      requireAllThere(acknowledged);
    }
  }

  private void runAndKill(Map<Long, String> acknowledged) throws Exception {
    Process writer =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Writer.class.getName(),
                data.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8))) {
      for (int i = 0; i < ACKNOWLEDGED_BEFORE_KILL; i++) {
        keep(out.readLine(), acknowledged);
      }
      // Killed while it goes on writing; what it still said is read to the last whole line.
      writer.toHandle().destroyForcibly();
      String line = out.readLine();
      while (line != null && line.endsWith(".")) {
        keep(line, acknowledged);
        line = out.readLine();
      }
    } finally {
      writer.destroyForcibly().waitFor();
    }
    assertTrue(writer.exitValue() != 0, "it ended by itself instead of being killed");
  }

  private static void keep(String line, Map<Long, String> acknowledged) {
    assertNotNull(line, "the writer ended early");
    String[] parts = line.split(" ");
    acknowledged.put(Long.parseLong(parts[0]), parts[1] + " " + parts[2]);
  }

  private void requireAllThere(Map<Long, String> acknowledged) {
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data);
        ClubDatabase database = new ClubDatabase(engine)) {
      Stock stock = new SqlStock(database);
      List<Movement> kept = stock.movementsAfter(0, 100_000);
      Map<Long, String> found = new HashMap<>();
      kept.forEach(each -> found.put(each.id(), each.lineId() + " " + each.quantity()));
      acknowledged.forEach((id, what) -> assertEquals(what, found.get(id), "movement " + id));
      for (StockLine line : stock.lines()) {
        int sum = stock.movements(line.id()).stream().mapToInt(Movement::quantity).sum();
        assertEquals(sum, line.quantity(), line.goods().name());
      }
      assertEquals(
          kept.stream().mapToInt(Movement::quantity).sum(),
          stock.lines().stream().mapToInt(StockLine::quantity).sum());
    }
  }

  /** The suite that will be killed: says each movement once the call has returned. */
  static final class Writer {
    public static void main(String[] args) throws IOException {
      try (DerbyStoreEngine engine = new DerbyStoreEngine(Path.of(args[0]));
          ClubDatabase database = new ClubDatabase(engine)) {
        Stock stock = new SqlStock(database);
        for (int turn = 0; !System.out.checkError(); turn++) {
          List<Movement> in =
              stock.receive(List.of(receipt(turn % 7, 3), receipt(turn % 5, 2)), "Ann Turner", "");
          in.forEach(Writer::say);
          say(stock.take(in.get(0).lineId(), 2, "", ""));
          say(stock.undo(in.get(1).id(), ""));
        }
      }
    }

    private static void say(Movement movement) {
      System.out.println(
          movement.id() + " " + movement.lineId() + " " + movement.quantity() + " .");
    }

    private static Receipt receipt(int which, int quantity) {
      Goods goods =
          new Goods(
              Goods.Kind.SUNDRY, "pin " + which, "", "", Optional.empty(), Optional.empty(), "");
      return new Receipt(goods, "Bench", StockLine.Condition.GOOD, quantity, Optional.empty());
    }
  }
}
