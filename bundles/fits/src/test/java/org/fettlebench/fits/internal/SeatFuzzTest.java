package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Outline.Corner;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatException;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.measure.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is asked, the answer is a right one or a refusal; the number shown is the seed. */
class SeatFuzzTest {
  private final SeatChecker seats = new SeatChecker();

  static IntStream seeds() {
    return IntStream.range(0, 150);
  }

  /** Anything: corners anywhere, repeated, on one line, crossing, of any size, with odd bends. */
  private static SeatQuestion anything(Random random) {
    double size = Math.pow(10, random.nextInt(9) - 3);
    List<Corner> corners = new ArrayList<>();
    int count = random.nextInt(9);
    for (int i = 0; i < count; i++) {
      Point at = place(random, size);
      if (i > 0 && random.nextInt(12) == 0) {
        at = corners.get(random.nextInt(i)).at();
      }
      double rounded = random.nextInt(6) == 0 ? size * (random.nextDouble() - 0.3) / 3 : 0;
      Optional<Point> through =
          random.nextInt(6) == 0 ? Optional.of(place(random, size)) : Optional.empty();
      corners.add(new Corner(at, rounded, through));
    }
    Seat seat = Seat.flat("any", Outline.ofCorners(corners), place(random, size));
    if (random.nextBoolean()) {
      double height = odd(random, size);
      seat =
          seat.withWallAdded(
              new Seat.Wall("w", place(random, size), place(random, size), height, size / 9));
    }
    return new SeatQuestion(seat, head(random, size), size / 20, size / 50, "any");
  }

  private static SeatedHead head(Random random, double size) {
    double flats = odd(random, size / 4);
    SeatedHead head =
        new SeatedHead(
            "h",
            flats * 1.1547005,
            random.nextInt(4) == 0 ? OptionalDouble.empty() : OptionalDouble.of(flats),
            OptionalDouble.empty(),
            random.nextInt(4) == 0 ? OptionalDouble.of(random.nextInt(90)) : OptionalDouble.empty(),
            "");
    if (random.nextInt(3) == 0) {
      head = head.withWasher(new SeatedHead.Washer("ws", odd(random, size / 3), size / 30, ""));
    }
    if (random.nextInt(3) == 0) {
      Spanner.Kind kind = Spanner.Kind.values()[random.nextInt(3)];
      head =
          head.withSpanner(new Spanner(kind, "s", size / 2, OptionalDouble.empty(), 0, "measured"));
    }
    return head;
  }

  private static double odd(Random random, double size) {
    return switch (random.nextInt(30)) {
      case 0 -> 0;
      case 1 -> -size;
      case 2 -> Double.NaN;
      case 3 -> Double.POSITIVE_INFINITY;
      default -> size * random.nextDouble();
    };
  }

  private static Point place(Random random, double size) {
    return random.nextInt(3) == 0
        ? new Point(size * random.nextInt(4), size * random.nextInt(4))
        : new Point(size * random.nextDouble() * 3, size * random.nextDouble() * 3);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void answersOrRefusesInWords(int seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 12; i++) {
      try {
        SeatQuestion question = anything(random);
        right(question, seats.check(question));
      } catch (SeatException refused) {
        assertTrue(refused.getMessage().length() > 15, refused.getMessage());
      }
    }
  }

  /** Holds an answer against the room itself, at a grid of centres. */
  private void right(SeatQuestion question, SeatAnswer answer) {
    Room room = new Plan(question).room();
    Box box = Box.of(question.seat().outline().points());
    Point at = question.seat().intended();
    double slack = 1e-6 + 1e-9 * box.longest();
    double here = room.at(at.xMm(), at.yMm());
    if (here >= 0) {
      assertEquals(here, answer.allowanceAtIntendedMm(), slack);
    } else {
      assertTrue(answer.allowanceAtIntendedMm() <= 0, answer.toString());
    }
    Point best = answer.best();
    assertEquals(room.at(best.xMm(), best.yMm()), answer.allowanceAtBestMm(), slack);
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= 24; i++) {
      for (int j = 0; j <= 24; j++) {
        double x = box.minX() + box.width() * i / 24;
        double y = box.minY() + box.height() * j / 24;
        double there = room.at(x, y);
        assertTrue(
            there <= answer.allowanceAtBestMm() + slack,
            x
                + ", "
                + y
                + ": "
                + there
                + " in "
                + answer
                + " of "
                + question.seat()
                + question.head());
        if (there >= 0) {
          nearest = Math.min(nearest, at.distanceMm(new Point(x, y)));
        }
      }
    }
    if (here < 0 && answer.allowanceAtBestMm() >= 0) {
      assertTrue(
          -answer.allowanceAtIntendedMm() <= nearest + slack,
          "a nearer one is allowed: "
              + nearest
              + " in "
              + answer
              + " of "
              + question.seat()
              + question.head());
      assertTrue(-answer.allowanceAtIntendedMm() >= -here - slack, "the way is at least the lack");
    }
    assertNotNull(answer.governing());
  }
}
