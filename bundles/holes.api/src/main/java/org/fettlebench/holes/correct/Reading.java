package org.fettlebench.holes.correct;

import org.fettlebench.measure.Point;

/**
 * One figure read from a rule or a calliper at a real hole.
 *
 * @param from what it was measured from
 * @param to which part of the hole it was measured to
 * @param readingMm what was read; 0 or more
 * @param plusMinusMm half the width of the interval that holds the true figure at 95 per cent
 *     (twice the standard uncertainty); above 0
 */
public record Reading(Reference from, To to, double readingMm, double plusMinusMm) {
  /**
   * Refuses what cannot have been read.
   *
   * @throws HoleException if the reading is negative, or the uncertainty not above 0
   */
  public Reading {
    Require.notNegative("reading from " + from.name(), readingMm);
    if (!(plusMinusMm > 0 && plusMinusMm <= readingMm + 1000)) {
      throw new HoleException(
          "reading from "
              + from.name()
              + ": plus or minus "
              + plusMinusMm
              + " mm is not above 0; no rule is read exactly, say how far it may be out");
    }
  }

  /** What a reading starts from. It counts as exactly where it is said to be. */
  public sealed interface Reference {
    /** Returns its name for people. */
    String name();
  }

  /**
   * A straight edge. Distances from it are square to it and counted towards the hole.
   *
   * @param name such as {@code edge from corner 1 to corner 2}
   * @param start one end
   * @param end the other end
   */
  public record Edge(String name, Point start, Point end) implements Reference {}

  /**
   * A corner, a scribed point or another hole, whose centre is known.
   *
   * @param name such as {@code corner 3}, {@code hole 2}
   * @param centre its place
   * @param diameterMm of the hole or of the pin in it; 0 for a corner or a point
   */
  public record Spot(String name, Point centre, double diameterMm) implements Reference {
    /**
     * Refuses a negative diameter.
     *
     * @throws HoleException if the diameter is negative or not a number
     */
    public Spot {
      Require.notNegative(name + ": diameter", diameterMm);
    }
  }

  /**
   * Which part of the hole. From a {@link Spot} with a diameter it is the same part of that one:
   * near rim to near rim, over both pins, between both pins.
   */
  public enum To {
    /** Its centre, as a scribed mark or a read-out gives it. */
    CENTRE("centre"),
    /** The nearer side of its rim, as with a rule. */
    NEAR_RIM("near rim"),
    /** The farther side of its rim. */
    FAR_RIM("far rim"),
    /** The farther side of a pin in it: the calliper closed over pin and edge. */
    OVER_PIN("over pin"),
    /** The nearer side of a pin in it: the calliper's inside jaws, or a depth rod. */
    TO_PIN("to pin");

    private final String words;

    To(String words) {
      this.words = words;
    }

    /** Returns the words for people and for typing. */
    public String words() {
      return words;
    }
  }
}
