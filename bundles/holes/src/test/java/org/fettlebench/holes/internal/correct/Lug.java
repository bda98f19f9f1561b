package org.fettlebench.holes.internal.correct;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.holes.correct.CleanUp;
import org.fettlebench.holes.correct.CorrectionQuestion;
import org.fettlebench.holes.correct.CorrectionQuestion.Around;
import org.fettlebench.holes.correct.CorrectionQuestion.Found;
import org.fettlebench.holes.correct.CorrectionQuestion.Rules;
import org.fettlebench.holes.correct.CorrectionQuestion.Tools;
import org.fettlebench.holes.correct.Cutter;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.measure.Point;

/** A lug with a hole of 4 mm to become 6 mm about a target, and what the bench holds. */
final class Lug {
  static final Point TARGET = new Point(10, 8);
  static final Rules RULES =
      new Rules(
          new CleanUp(0.1, "a test"), new ExpectedError("filing", 0.05, "a test"), 1, "a test");

  private Lug() {}

  static List<Cutter> cutters(double... diameters) {
    return Arrays.stream(diameters).mapToObj(d -> new Cutter(d + " mm", d)).toList();
  }

  static final Tools TOOLS =
      new Tools(cutters(3, 4, 4.5, 5, 5.2, 6, 7, 9, 12), cutters(2, 3.5, 4, 5));

  static CorrectionQuestion ask(double dx, double dy, double within, Around around) {
    return new CorrectionQuestion(
        TARGET, new Found(TARGET.moved(dx, dy), 4, within), 6, RULES, TOOLS, around);
  }

  /** A flat of 20 by 16, or as wide as told, corners counted from the left near one. */
  static Around seat(double width, double head, boolean mateOpen, SeatedHead... others) {
    Seat seat =
        Seat.flat(
            "lug",
            org.fettlebench.fits.Outline.of(
                List.of(
                    new Point(0, 0), new Point(width, 0), new Point(width, 16), new Point(0, 16))),
            TARGET);
    return new Around(
        Optional.of(new SeatQuestion(seat, round(head), 6, 0.3, "a test")),
        List.of(others),
        mateOpen);
  }

  static SeatedHead round(double diameter) {
    return new SeatedHead(
        "round " + diameter,
        diameter,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        "");
  }
}
