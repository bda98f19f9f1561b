package org.fettlebench.fasteners;

/**
 * A style of head, nut or washer.
 *
 * @param id as written in files, such as {@code small-hexagon}
 * @param title for people, such as {@code hexagon one size smaller}
 * @param part what it is
 */
public record HeadStyle(String id, String title, Part part) {
  /** What a style is a style of. */
  public enum Part {
    /** Head of a screw or bolt. */
    HEAD,
    /** Nut. */
    NUT,
    /** Washer. */
    WASHER
  }
}
