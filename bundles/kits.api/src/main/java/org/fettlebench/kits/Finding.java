package org.fettlebench.kits;

import java.util.List;

/**
 * One thing that a rule found out about a joint.
 *
 * @param weight how much it matters
 * @param rule name of the rule, such as "seat"
 * @param sentence for people, with its figures and units
 * @param figures the figures for machines; names end in their unit, such as {@code allowanceMm}
 * @param standing why a figure in it is less than certain ("from memory"); empty when published
 */
public record Finding(
    Weight weight, String rule, String sentence, List<Figure> figures, String standing) {
  /** Copies what could change. */
  public Finding {
    figures = List.copyOf(figures);
  }

  /** How much a finding matters. */
  public enum Weight {
    /** Good to know. */
    NOTE,
    /** Take care. */
    CAUTION,
    /** The joint cannot be made so. */
    FAULT
  }

  /**
   * A figure with its unit in its name.
   *
   * @param name such as {@code allowanceMm}
   * @param value the figure
   */
  public record Figure(String name, double value) {}
}
