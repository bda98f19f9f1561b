package org.fettlebench.fasteners;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;

/**
 * What is to be cut into the face so that a head sits as it should.
 *
 * @param kind shape of the cut
 * @param head that sits in it or on it
 * @param hole the hole for the screw, in the middle of the cut
 * @param leastDiameter at the face: the head's largest size, below which it cannot enter or bear
 * @param diameter at the face: as a table lists it, else {@code leastDiameter}
 * @param angleDegrees included angle of a countersink; empty for the others
 * @param depth from the face to the flat of a counterbore or spot face, or to where a countersink
 *     meets the hole
 * @param sources of the figures, each once
 * @param notes what a person should know; in words
 */
public record HeadSink(
    Kind kind,
    Head head,
    Length hole,
    Length leastDiameter,
    Length diameter,
    Optional<Double> angleDegrees,
    Length depth,
    List<Source> sources,
    List<String> notes) {
  /** Copies what could change. */
  public HeadSink {
    sources = List.copyOf(sources);
    notes = List.copyOf(notes);
  }

  /** Shapes of the cut. */
  public enum Kind {
    /** A cone, for a countersunk head. */
    COUNTERSINK("countersink"),
    /** A flat-bottomed recess that takes the head in. */
    COUNTERBORE("counterbore"),
    /** A flat just deep enough to clean the face. */
    SPOT_FACE("spot face");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** Returns it for people. */
    public String words() {
      return words;
    }
  }

  /**
   * Returns the smallest of some cutters that makes it: not below the head's largest size. For a
   * countersink the cutter's angle must fit too, which a diameter does not tell.
   *
   * @param diameters of the cutters at hand
   */
  public Optional<Length> smallestCutter(Collection<Length> diameters) {
    return diameters.stream()
        .filter(cutter -> cutter.compareTo(leastDiameter) >= 0)
        .min(Comparator.naturalOrder());
  }
}
