package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.holes.otherface.Turn;
import org.fettlebench.measure.Length;

/**
 * How a person works at the hole: what was read at it, which margins are kept, how the part is
 * turned.
 *
 * @param readings what was read at a hole that is there
 * @param margins what filing and drilling must leave
 * @param over how it is drilled from the other face
 */
record Practice(Readings readings, Margins margins, Over over) {
  /** Nothing read, the usual margins. */
  static final Practice USUAL = new Practice(Readings.NONE, Margins.USUAL, Over.UNKNOWN);

  Practice with(Readings other) {
    return new Practice(other, margins, over);
  }

  Practice with(Margins other) {
    return new Practice(readings, other, over);
  }

  Practice with(Over other) {
    return new Practice(readings, margins, other);
  }

  /**
   * Figures read at a hole.
   *
   * @param way index of how all of them were read, see {@link Recipes#WAYS}
   * @param pin that stood in the hole
   * @param doubt how far each may be out
   * @param entries in the order in which they were read
   */
  record Readings(int way, Optional<Length> pin, Optional<Length> doubt, List<Entry> entries) {
    /** Two are needed; a calliper reads within 0.05 mm: common practice, no source. */
    static final Readings NONE =
        new Readings(
            0,
            Optional.empty(),
            Optional.of(Length.ofMillimetres(0.05)),
            List.of(Entry.BLANK, Entry.BLANK));

    Readings {
      entries = List.copyOf(entries);
    }

    Readings by(int otherWay) {
      return new Readings(otherWay, pin, doubt, entries);
    }

    Readings over(Optional<Length> otherPin) {
      return new Readings(way, otherPin, doubt, entries);
    }

    Readings within(Optional<Length> otherDoubt) {
      return new Readings(way, pin, otherDoubt, entries);
    }

    Readings with(int index, Entry entry) {
      return new Readings(way, pin, doubt, Shape.set(entries, index, entry));
    }

    /** Returns the same with room for one reading more. */
    Readings more() {
      return new Readings(way, pin, doubt, Shape.plus(entries, entries.size(), Entry.BLANK));
    }

    /** Returns the same with one reading read back from a draft. */
    Readings also(Entry entry, boolean first) {
      List<Entry> all = new ArrayList<>(first ? List.of() : entries);
      all.add(entry);
      return new Readings(way, pin, doubt, all);
    }
  }

  /**
   * One figure.
   *
   * @param from name of what it was measured from; empty until it is chosen
   * @param read the figure
   */
  record Entry(String from, Optional<Length> read) {
    static final Entry BLANK = new Entry("", Optional.empty());
  }

  /**
   * Margins.
   *
   * @param cleanUpMm metal that the last drill must find on every side
   * @param filingMm how far a filed hole may end from its place
   * @param bushWallMm wall of a bush
   */
  record Margins(double cleanUpMm, double filingMm, double bushWallMm) {
    /** Until a person types their own. */
    static final String HABIT = "common practice, no source";

    /** Common practice, no source. */
    static final Margins USUAL = new Margins(0.1, 0.1, 1);

    /** Returns where a figure comes from. */
    String means(double mm, double usualMm) {
      return mm == usualMm ? HABIT : "as said on the page";
    }
  }

  /**
   * Drilling from the other face.
   *
   * @param depthMm from face to face; empty until it is typed
   * @param turn how the part is turned over
   * @param lead how far the drill may wander, a radius per depth
   */
  record Over(OptionalDouble depthMm, Turn turn, double lead) {
    /** A drill's wander over the depth until a person types it: common practice, no source. */
    static final double USUAL_LEAD = 0.01;

    static final Over UNKNOWN = new Over(OptionalDouble.empty(), Turn.SIDEWAYS, USUAL_LEAD);

    Over deep(OptionalDouble mm) {
      return new Over(mm, turn, lead);
    }

    Over turned(Turn other) {
      return new Over(depthMm, other, lead);
    }
  }
}
