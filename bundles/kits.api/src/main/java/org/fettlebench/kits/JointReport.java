package org.fettlebench.kits;

import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.Verdict;

/**
 * What the check says of one joint.
 *
 * @param joint the joint
 * @param verdict whether the head sits; empty when there is no measured seat
 * @param supply whether the fasteners are there
 * @param seat the answered seat question, for drawing
 * @param findings why, gravest first
 * @param cures for the seat, best first
 * @param substitutes other fasteners that would do, least change first
 * @param fetch what to bring to the bench
 */
public record JointReport(
    Joint joint,
    Optional<Verdict> verdict,
    Supply supply,
    Optional<SeatAnswer> seat,
    List<Finding> findings,
    List<SeatCure> cures,
    List<Substitute> substitutes,
    List<Fetch> fetch) {
  /** Copies what could change. */
  public JointReport {
    findings = List.copyOf(findings);
    cures = List.copyOf(cures);
    substitutes = List.copyOf(substitutes);
    fetch = List.copyOf(fetch);
  }

  /** Returns whether any finding says that the joint cannot be made so, or the head fouls. */
  public boolean fails() {
    return verdict.filter(v -> v == Verdict.FOULS).isPresent()
        || findings.stream().anyMatch(f -> f.weight() == Finding.Weight.FAULT);
  }

  /** Returns whether the joint fails, or its fasteners are short or wrong. */
  public boolean wanting() {
    return fails() || supply == Supply.SHORT || supply == Supply.WRONG;
  }

  /** Whether the fasteners of a joint are there. */
  public enum Supply {
    /** All are in the bag or in stock, and nothing speaks against them. */
    COMPLETE("complete"),
    /** Some are missing. */
    SHORT("short"),
    /** What is there cannot be used: it fouls or does not fit the hole. */
    WRONG("wrong"),
    /** Stock holds enough of something that fits better; those are kept for this joint. */
    BETTER_FROM_STOCK("better from stock");

    private final String words;

    Supply(String words) {
      this.words = words;
    }

    /** Returns the words shown to people. */
    public String words() {
      return words;
    }
  }

  /**
   * Another fastener that would do.
   *
   * @param fastener what
   * @param change what it changes against the kit's, in words
   * @param present how many stock holds
   * @param place where
   * @param after the seat with it, when there is a seat
   */
  public record Substitute(
      Fastener fastener, String change, int present, String place, Optional<SeatAnswer> after) {}

  /**
   * Something to bring to the bench.
   *
   * @param role what it is for: tapping drill, clearance drill, tap, fastener
   * @param what its name
   * @param state whether it can be had
   * @param from drawer, holder, bag of the kit or what else to say
   * @param figures such as "73 % of thread" or "4 off"; may be empty
   * @param count how many; at least 1
   */
  public record Fetch(Role role, String what, State state, String from, String figures, int count) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if nothing is named or the count is below 1
     */
    public Fetch {
      Require.name("thing to fetch", what);
      Require.atLeast("number to fetch", count, 1);
    }

    /** Makes one thing to bring. */
    public Fetch(Role role, String what, State state, String from, String figures) {
      this(role, what, state, from, figures, 1);
    }

    /** Returns whether it can be had now. */
    public boolean atHand() {
      return state == State.IN || state == State.IN_BAG;
    }

    /** What a thing is fetched for. */
    public enum Role {
      /** The fastener itself. */
      FASTENER("fastener"),
      /** Drill for the hole to tap. */
      TAPPING_DRILL("tapping drill"),
      /** Drill for the hole to pass. */
      CLEARANCE_DRILL("clearance drill"),
      /** Tap. */
      TAP("tap");

      private final String words;

      Role(String words) {
        this.words = words;
      }

      /** Returns the words shown to people. */
      public String words() {
        return words;
      }
    }

    /** Whether a thing can be had. */
    public enum State {
      /** In the kit's bag. */
      IN_BAG("in the bag"),
      /** In its place. */
      IN("in"),
      /** All are out on loan. */
      OUT("out on loan"),
      /** Only worn ones are held. */
      WORN("worn"),
      /** None is held. */
      NOT_HELD("not held");

      private final String words;

      State(String words) {
        this.words = words;
      }

      /** Returns the words shown to people. */
      public String words() {
        return words;
      }
    }
  }
}
