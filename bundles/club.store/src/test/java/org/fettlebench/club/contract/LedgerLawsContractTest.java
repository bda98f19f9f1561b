package org.fettlebench.club.contract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.fettlebench.club.ClubException;
import org.fettlebench.club.Movement;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The laws of the ledger, over chance sequences and over threads. */
public abstract class LedgerLawsContractTest extends StoreContract {
  private static final String DIFFERENCES =
      "SELECT count(*) FROM stock_line l WHERE l.quantity <> (SELECT coalesce(sum(m.quantity), 0)"
          + " FROM movement m WHERE m.line_id = l.id) OR l.lent <> (SELECT coalesce(sum(o.quantity),"
          + " 0) FROM loan o WHERE o.line_id = l.id AND o.returned_ms IS NULL)";

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 20_261, 987_654_321})
  void chanceSequencesKeepEveryLaw(long seed) throws SQLException {
    Random chance = new Random(seed);
    Stock stock = stock();
    long[] lines = {screws(stock, 5), drillLine(stock)};
    int[] present = {5, 2};
    int[] lent = {0, 0};
    List<Movement> all = new ArrayList<>(stock.movementsAfter(0, 10));
    for (int step = 0; step < 150; step++) {
      int which = chance.nextInt(2);
      int quantity = 1 + chance.nextInt(6);
      long line = lines[which];
      switch (chance.nextInt(6)) {
        case 0 -> all.add(stock.putBack(line, quantity, "Ann", ""));
        case 1 -> all.add(stock.count(line, quantity, "", ""));
        case 2, 3 -> {
          if (quantity > present[which]) {
            assertThrows(ClubException.class, () -> stock.take(line, quantity, "", ""));
          } else {
            all.add(stock.take(line, quantity, "", ""));
          }
        }
        case 4 -> lendOrGiveBack(stock, line, quantity, present[which], lent[which]);
        default -> undoOne(stock, all, chance);
      }
      for (int i = 0; i < 2; i++) {
        StockLine now = stock.line(lines[i]).orElseThrow();
        int sum = stock.movements(lines[i]).stream().mapToInt(Movement::quantity).sum();
        assertEquals(sum, now.quantity());
        assertTrue(now.present() >= 0 && now.lent() >= 0);
        present[i] = now.present();
        lent[i] = now.lent();
      }
    }
    assertEquals(0, number(DIFFERENCES));
    assertEquals(all, stock.movementsAfter(0, 1000));
  }

  private static long drillLine(Stock stock) {
    return stock.receive(List.of(receipt(drill(1, 8), "Stand", 2)), "", "").get(0).lineId();
  }

  private static void lendOrGiveBack(Stock stock, long line, int quantity, int present, int lent) {
    if (lent > 0) {
      stock.giveBack(line, Math.min(quantity, lent), "Bill");
    } else if (quantity > present) {
      assertThrows(ClubException.class, () -> stock.lend(line, quantity, "Bill", Optional.empty()));
    } else {
      stock.lend(line, quantity, "Bill", Optional.empty());
    }
  }

  private static void undoOne(Stock stock, List<Movement> all, Random chance) {
    Movement some = all.get(chance.nextInt(all.size()));
    boolean undoneBefore =
        all.stream().anyMatch(each -> each.note().equals("undoes movement " + some.id()));
    int present = stock.line(some.lineId()).orElseThrow().present();
    if (undoneBefore || some.quantity() == 0 || present < some.quantity()) {
      assertThrows(ClubException.class, () -> stock.undo(some.id(), ""));
    } else {
      all.add(stock.undo(some.id(), ""));
    }
  }

  @Test
  void theSchemaItselfRefusesWhatTheLawsForbid() throws SQLException {
    Stock stock = stock();
    long line = screws(stock, 5);
    Movement taken = stock.take(line, 1, "", "");
    stock.undo(taken.id(), "");
    for (String forbidden :
        List.of(
            "UPDATE stock_line SET quantity = -1",
            "UPDATE stock_line SET lent = 6",
            "UPDATE stock_line SET lent = -1",
            "UPDATE stock_line SET kind = 'SPOON'",
            "UPDATE stock_line SET place_id = 99",
            "INSERT INTO movement VALUES (90, 99, 'RECEIVED', 1, 0, NULL, '', NULL)",
            "INSERT INTO movement VALUES (90, 1, 'RECEIVED', 0, 0, NULL, '', NULL)",
            "INSERT INTO movement VALUES (90, 1, 'RECEIVED', -1, 0, NULL, '', NULL)",
            "INSERT INTO movement VALUES (90, 1, 'TAKEN', 1, 0, NULL, '', NULL)",
            "INSERT INTO movement VALUES (90, 1, 'TAKEN', -1, 0, 99, '', NULL)",
            "INSERT INTO movement VALUES (90, 1, 'UNDONE', 1, 0, NULL, '', NULL)",
            "INSERT INTO movement VALUES (90, 1, 'UNDONE', 1, 0, NULL, '', " + taken.id() + ")",
            "INSERT INTO loan VALUES (90, 1, 99, 1, 0, NULL, NULL)",
            "DELETE FROM stock_line",
            "DELETE FROM place")) {
      assertThrows(SQLException.class, () -> execute(forbidden), forbidden);
    }
    assertEquals(5, stock.line(line).orElseThrow().quantity());
  }

  @Test
  void ofTwoWhoWantTheLastOneOneGetsIt() throws Exception {
    Stock stock = stock();
    long line = screws(stock, 1);
    for (int round = 0; round < 20; round++) {
      List<Boolean> got = together(2, () -> gets(stock, line));
      assertEquals(1, got.stream().filter(one -> one).count());
      assertEquals(0, stock.line(line).orElseThrow().quantity());
      stock.putBack(line, 1, "", "");
    }
  }

  private static boolean gets(Stock stock, long line) {
    try {
      stock.take(line, 1, "", "");
      return true;
    } catch (ClubException tooLate) {
      return false;
    }
  }

  @Test
  void oneMovementIsUndoneOnceByManyAtATime() throws Exception {
    Stock stock = stock();
    long line = screws(stock, 9);
    Movement taken = stock.take(line, 3, "", "");
    List<Boolean> undone =
        together(
            3,
            () -> {
              try {
                stock.undo(taken.id(), "");
                return true;
              } catch (ClubException already) {
                return false;
              }
            });
    assertEquals(1, undone.stream().filter(one -> one).count());
    assertEquals(9, stock.line(line).orElseThrow().quantity());
  }

  @Test
  void manyWhoReceiveTheSameNewGoodsMakeOneLine() throws Exception {
    Stock stock = stock();
    stock.lines();
    List<Long> lines = together(4, () -> screws(stock, 2));
    assertEquals(1, new HashSet<>(lines).size());
    assertEquals(8, stock.line(lines.get(0)).orElseThrow().quantity());
  }

  @Test
  void readersNeverMissAMovementThatIsCommittedLate() throws Exception {
    Stock stock = stock();
    long line = screws(stock, 1000);
    Set<Long> seen = new HashSet<>();
    long last = 0;
    ExecutorService writers = Executors.newFixedThreadPool(3);
    try {
      List<Future<?>> running = new ArrayList<>();
      for (int writer = 0; writer < 3; writer++) {
        running.add(
            writers.submit(
                () -> {
                  for (int i = 0; i < 40; i++) {
                    stock.take(line, 1, "", "");
                  }
                }));
      }
      boolean done = false;
      while (!done) {
        done = running.stream().allMatch(Future::isDone);
        for (Movement movement : stock.movementsAfter(last, 7)) {
          last = movement.id();
          seen.add(last);
          done = false;
        }
      }
      for (Future<?> each : running) {
        each.get();
      }
    } finally {
      writers.shutdownNow();
    }
    assertEquals(121, seen.size());
    assertEquals(880, stock.line(line).orElseThrow().quantity());
  }

  private static <T> List<T> together(int many, Callable<T> act)
      throws InterruptedException, ExecutionException {
    ExecutorService threads = Executors.newFixedThreadPool(many);
    CyclicBarrier start = new CyclicBarrier(many);
    try {
      List<Future<T>> running = new ArrayList<>();
      for (int i = 0; i < many; i++) {
        running.add(
            threads.submit(
                () -> {
                  start.await();
                  return act.call();
                }));
      }
      List<T> results = new ArrayList<>();
      for (Future<T> each : running) {
        results.add(each.get());
      }
      return results;
    } finally {
      threads.shutdownNow();
    }
  }
}
