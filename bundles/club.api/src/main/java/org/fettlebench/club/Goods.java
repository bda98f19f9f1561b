package org.fettlebench.club;

import java.util.Objects;
import java.util.Optional;
import org.fettlebench.measure.Length;

/**
 * What a stock line holds. Equal goods in one place and condition are one line; goods are equal
 * when every component is, lengths to the nanometre.
 *
 * @param kind what sort of thing
 * @param name short name for people, such as {@code 2 BA hexagon screw x 1/2 in} or {@code 5/32
 *     in}; 1 to 200 characters
 * @param thread designation of the thread, for fasteners and taps; else empty; at most 60
 *     characters
 * @param style head, nut or washer style of a fastener, lead of a tap ({@code taper}, {@code
 *     second}, {@code bottoming}); else empty; at most 40 characters
 * @param diameter of a drill; above nothing where given
 * @param length under the head of a screw, of a stud, where it matters; above nothing where given
 * @param material such as {@code steel}, {@code brass}; empty if not said; at most 80 characters
 */
public record Goods(
    Kind kind,
    String name,
    String thread,
    String style,
    Optional<Length> diameter,
    Optional<Length> length,
    String material) {

  /**
   * Checks the goods and takes the blanks off the ends of their words.
   *
   * @throws ClubException if there is no name, a text is too long or more than one line, or a
   *     diameter or length is not above nothing
   */
  public Goods {
    Objects.requireNonNull(kind, "kind");
    name = Words.needed("the name of the goods", name, 200);
    thread = Words.optional("the thread", thread, 60);
    style = Words.optional("the style", style, 40);
    material = Words.optional("the material", material, 80);
    requirePositive("diameter", name, diameter);
    requirePositive("length", name, length);
  }

  private static void requirePositive(String what, String name, Optional<Length> length) {
    if (length.isPresent() && !length.get().isPositive()) {
      throw new ClubException(
          "the %s of %s is %s; give one above nothing, or leave it out"
              .formatted(what, name, length.get()));
    }
  }

  /** Sorts of thing. */
  public enum Kind {
    /** Screw, bolt, stud, nut, washer. */
    FASTENER,
    /** Drill. */
    DRILL,
    /** Tap. */
    TAP,
    /** Anything else. */
    SUNDRY
  }
}
