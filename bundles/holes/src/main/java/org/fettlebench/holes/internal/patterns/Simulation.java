package org.fettlebench.holes.internal.patterns;

import java.util.List;
import org.fettlebench.holes.chance.Draws;
import org.fettlebench.holes.internal.chance.Blocks;
import org.fettlebench.holes.internal.chance.Places;
import org.fettlebench.holes.patterns.PatternQuestion;
import org.fettlebench.measure.Point;

/** Simulates pairs of parts. */
final class Simulation {
  private final PatternQuestion question;
  private final List<Point> centres;

  Simulation(PatternQuestion question) {
    this.question = question;
    this.centres = question.pattern().centres();
  }

  /** Returns in how many trials every fastener enters. */
  long good() {
    double play = question.playMm();
    if (!(play >= 0)) {
      return 0;
    }
    return new Blocks(question.seed())
        .next(
            question.trials(),
            (first, end, draws) -> {
              Pairs pairs = new Pairs(draws, play);
              long good = 0;
              for (int trial = first; trial < end; trial++) {
                good += pairs.next().enters() ? 1 : 0;
              }
              return good;
            });
  }

  /** Returns the play that each trial needs. */
  double[] needsMm() {
    double[] needs = new double[question.trials()];
    new Blocks(question.seed())
        .next(
            needs.length,
            (first, end, draws) -> {
              Pairs pairs = new Pairs(draws, 0);
              for (int trial = first; trial < end; trial++) {
                needs[trial] = Math.max(0, pairs.next().least());
              }
              return 0;
            });
    return needs;
  }

  /** One pair of parts after another. */
  private final class Pairs {
    private final Places upper;
    private final Places lower;
    private final boolean leans = question.leaning().law().isPresent();
    private final Places leaning;
    private final Motion motion = new Motion(leans ? 2 * centres.size() : centres.size());
    private final double playMm;

    Pairs(Draws draws, double playMm) {
      this.upper = new Places(question.upper().placing().law(), draws);
      this.lower = new Places(question.lower().placing().law(), draws);
      this.leaning = new Places(question.leaning().law(), draws);
      this.playMm = playMm;
    }

    /** Drills another pair; what it returned before is used up. */
    Motion next() {
      motion.clear();
      for (Point centre : centres) {
        upper.next();
        lower.next();
        add(centre, 0, 0);
        if (leans) {
          // What stands over has to pass where it leaves the hole as well as where it enters.
          leaning.next();
          add(centre, leaning.x(), leaning.y());
        }
      }
      return motion;
    }

    private void add(Point centre, double overX, double overY) {
      boolean below = question.lower().tapped();
      motion.add(
          centre.xMm() + upper.x() + (below ? 0 : overX),
          centre.yMm() + upper.y() + (below ? 0 : overY),
          centre.xMm() + lower.x() + (below ? overX : 0),
          centre.yMm() + lower.y() + (below ? overY : 0),
          playMm);
    }
  }
}
