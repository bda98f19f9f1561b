package org.fettlebench.holes.patterns;

import org.fettlebench.tables.Source;

/**
 * A rule of how near a hole may come to an edge or to the next hole, centre to edge or centre to
 * centre: so many diameters of fastener or hole, and so many pitches of its thread.
 *
 * @param id as in its table
 * @param what it is for, in words
 * @param to what the distance goes to
 * @param fastenerDiameters times the fastener's diameter; 0 when it does not count
 * @param holeDiameters times the hole's diameter; 0 when it does not count
 * @param threadPitches times the pitch of the thread; 0 when it does not count
 * @param aboveFastenerMm it holds for larger fasteners only; 0 for any
 * @param source of the rule
 */
public record EdgeRule(
    String id,
    String what,
    To to,
    double fastenerDiameters,
    double holeDiameters,
    double threadPitches,
    double aboveFastenerMm,
    Source source) {
  /** Returns whether the rule holds for a fastener. */
  public boolean holdsFor(double fastenerMm) {
    return fastenerMm > aboveFastenerMm;
  }

  /** Returns the least distance by this rule, in millimetres. */
  public double leastMm(double fastenerMm, double holeMm, double pitchMm) {
    Require.size("fastener diameter", fastenerMm);
    Require.size("hole diameter", holeMm);
    Require.notNegative("pitch of the thread", pitchMm);
    return fastenerDiameters * fastenerMm + holeDiameters * holeMm + threadPitches * pitchMm;
  }

  /** What a distance goes to. */
  public enum To {
    /** The edge beside the hole. */
    EDGE("edge"),
    /** The edge that the load pulls towards. */
    END("end"),
    /** The centre of the next hole. */
    NEXT_HOLE("next hole");

    private final String word;

    To(String word) {
      this.word = word;
    }

    /** Returns the word for it in a table file and for people. */
    public String word() {
      return word;
    }
  }
}
