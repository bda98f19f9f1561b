package org.fettlebench.kits;

import java.util.List;

/**
 * One thing that a rule found out about a joint.
 *
 * @param weight how much it matters
 * @param rule name of the rule, such as "seat"; not blank
 * @param sentence for people, with its figures and units; not blank
 * @param figures the figures for machines; names end in their unit, such as {@code allowanceMm}
 * @param standing why a figure in it is less than certain ("from memory"); empty when published
 */
public record Finding(
    Weight weight, String rule, String sentence, List<Figure> figures, String standing) {
  /**
   * Copies what could change.
   *
   * @throws IllegalArgumentException if the rule or the sentence is blank
   */
  public Finding {
    Require.name("rule of a finding", rule);
    Require.name("sentence of a finding", sentence);
    figures = List.copyOf(figures);
  }

  /** Makes a finding whose figures are all published, or which has none. */
  public static Finding of(Weight weight, String rule, String sentence, Figure... figures) {
    return new Finding(weight, rule, sentence, List.of(figures), "");
  }

  /** Returns this finding with a standing, such as "common practice, no source". */
  public Finding standing(String words) {
    return new Finding(weight, rule, sentence, figures, words);
  }

  /** Returns the sentence, with the standing in brackets behind it when there is one. */
  public String spoken() {
    return standing.isEmpty() ? sentence : sentence + " [" + standing + "]";
  }

  /** How much a finding matters. */
  public enum Weight {
    /** Good to know. */
    NOTE("note"),
    /** Take care. */
    CAUTION("caution"),
    /** The joint cannot be made so. */
    FAULT("fault");

    private final String word;

    Weight(String word) {
      this.word = word;
    }

    /** Returns the word shown to people. */
    public String word() {
      return word;
    }
  }

  /**
   * A figure with its unit in its name.
   *
   * @param name such as {@code allowanceMm}; not blank
   * @param value the figure; finite
   */
  public record Figure(String name, double value) {
    /**
     * Refuses what no machine could read.
     *
     * @throws IllegalArgumentException if the name is blank or the value not finite
     */
    public Figure {
      Require.name("name of a figure", name);
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException(
            "figure " + name + " is " + value + ", no finite number");
      }
    }
  }
}
