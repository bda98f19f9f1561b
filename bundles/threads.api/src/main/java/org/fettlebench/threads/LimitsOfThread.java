package org.fettlebench.threads;

import java.util.List;

/**
 * What a class allows of one of two mating threads.
 *
 * @param thread basic sizes
 * @param side screw or nut
 * @param threadClass standard and class, such as {@code ISO 965-1 6g}
 * @param major limits of the major diameter
 * @param effective limits of the effective (pitch) diameter
 * @param minor limits of the minor diameter; of a screw the most is at the flat root and the least
 *     at the rounded root, as each standard counts them
 * @param notes what a person must know of these figures, such as a grade that does not exist
 */
public record LimitsOfThread(
    ScrewThread thread,
    ThreadSide side,
    String threadClass,
    DiameterRange major,
    DiameterRange effective,
    DiameterRange minor,
    List<String> notes) {
  /** Copies what could change. */
  public LimitsOfThread {
    notes = List.copyOf(notes);
  }
}
