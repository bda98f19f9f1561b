package org.fettlebench.command.internal.holeplace;

import org.fettlebench.command.Call;
import org.fettlebench.holes.correct.CleanUp;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.measure.Length;

/** Figures of workshop habit that hold when the person says none; each tells what it is. */
final class Habits {
  static final String CLEAN_UP = "--clean-up";
  static final String FILING = "--filing";
  static final String WALL = "--wall";

  private static final String HABIT = "common practice, no source";
  private static final String SAID = "as said";

  /** The usual 19 holes in 20; common practice, no source. */
  static final double CONFIDENCE = 0.95;

  // Common practice, no source: a drill that finds less may rub on one side.
  private static final Length USUAL_CLEAN_UP = Length.ofMillimetres(0.1);
  // Common practice, no source: filing to a scribed circle with care.
  private static final Length USUAL_FILING = Length.ofMillimetres(0.1);
  // Common practice, no source: a plug with less wall turns or breaks when it is drilled.
  private static final Length USUAL_WALL = Length.ofMillimetres(1);

  private Habits() {}

  static CleanUp cleanUp(Call call) {
    return new CleanUp(mm(call, CLEAN_UP, USUAL_CLEAN_UP), means(call, CLEAN_UP));
  }

  static ExpectedError filing(Call call) {
    return new ExpectedError("filing", mm(call, FILING, USUAL_FILING), means(call, FILING));
  }

  static double wallMm(Call call) {
    return mm(call, WALL, USUAL_WALL);
  }

  static String means(Call call, String option) {
    return call.option(option).isPresent() ? SAID : HABIT;
  }

  private static double mm(Call call, String option, Length usual) {
    return call.length(option).orElse(usual).millimetres();
  }
}
