package org.fettlebench.desktop.castings.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.castings.Castings;
import org.fettlebench.desktop.widgets.trial.Windowed;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.Test;

/** Quick answers come at once; slow ones wait for a pause, and only the newest is sought. */
class AskerTest {
  @Test
  void afterASlowAnswerOnlyTheNewestQuestionIsAskedOnceTypingPauses() {
    Windowed.run(
        "asker",
        desk -> {
          desk.open(200, 100);
          List<String> asked = new ArrayList<>();
          Castings slow =
              casting -> {
                asked.add(casting.name());
                sleep(60);
                return RealTrade.CASTINGS.place(casting);
              };
          Asker asker = new Asker(desk, new CastingBook(slow));
          Sketch sketch = CastingPicturesTest.sketch("valve");
          List<Reply> replies = new ArrayList<>();
          asker.ask(sketch.named("first"), replies::add);
          assertEquals(1, replies.size(), "the first is asked at once");
          asker.ask(sketch.named("second"), replies::add);
          asker.ask(sketch.named("third"), replies::add);
          assertEquals(1, replies.size(), "now it is known to be slow");
          desk.until("the newest is answered", () -> replies.size() == 2);
          assertEquals(List.of("first", "third"), asked);
        });
  }

  @Test
  void manyLinesThatMayBeTurnedAreNotWaitedFor() {
    Windowed.run(
        "asker-many",
        desk -> {
          desk.open(200, 100);
          Asker asker = new Asker(desk, new CastingBook(RealTrade.CASTINGS));
          Sketch turning = CastingPicturesTest.sketch("cylinder");
          List<FaceRow> rows = new ArrayList<>();
          for (int i = 0; i < 4; i++) {
            String mark = " " + i;
            turning.rows().forEach(row -> rows.add(row.named(row.name() + mark)));
          }
          List<Reply> replies = new ArrayList<>();
          asker.ask(turning.rows(rows), replies::add);
          assertEquals(0, replies.size());
          desk.until("it is answered", () -> replies.size() == 1);
        });
  }

  private static void sleep(long millis) {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException stopped) {
      throw new AssertionError(stopped);
    }
  }
}
