package org.fettlebench.fits;

import java.util.OptionalDouble;

/**
 * What turns a head, and the room that it takes.
 *
 * @param kind of tool
 * @param title for people, such as {@code ring spanner 10 mm}
 * @param headDiameterMm outside diameter of a ring or socket; width of an open spanner's head
 * @param heightMm thickness of its head, where known
 * @param liftMm how far above the flat, or the washer, its head is held; 0 when it lies on it
 * @param standing where the figures come from and how far they can be relied on
 */
public record Spanner(
    Kind kind,
    String title,
    double headDiameterMm,
    OptionalDouble heightMm,
    double liftMm,
    String standing) {

  /** Kinds of tool. */
  public enum Kind {
    /** A ring: its rim needs its whole circle. */
    RING("ring spanner", "rim"),
    /**
     * An open-ended one: it comes from one side and needs its head's width there, and beyond the
     * hexagon no more than the hexagon itself.
     */
    OPEN("open spanner", "head"),
    /** A socket: it needs its whole circle, at any height above the flat. */
    SOCKET("socket", "outside");

    private final String words;
    private final String part;

    Kind(String words, String part) {
      this.words = words;
      this.part = part;
    }

    /** Returns the word shown to people. */
    public String words() {
      return words;
    }

    /** Returns what meets a wall, such as "ring spanner's rim". */
    public String part() {
      return words + "'s " + part;
    }
  }

  /** Returns its title with the article that it is spoken with, such as "an open spanner". */
  public String spoken() {
    boolean vowel = !title.isEmpty() && "aeiouAEIOU".indexOf(title.charAt(0)) >= 0;
    return (vowel ? "an " : "a ") + title;
  }

  /** Returns the same spanner held higher above the flat, in millimetres. */
  public Spanner withLift(double mm) {
    return new Spanner(kind, title, headDiameterMm, heightMm, mm, standing);
  }
}
