package org.fettlebench.modules;

import java.time.Instant;
import java.util.List;

/**
 * One installed module as a person sees it.
 *
 * @param symbolicName unique name
 * @param title name for people
 * @param description one sentence
 * @param version version as text
 * @param vendor who made it, empty if not said
 * @param dropped whether it came from the modules folder rather than with the suite
 * @param location the file it came from, empty if not known
 * @param working whether it has started and every part of it is satisfied
 * @param state in words, and if it does not work why
 * @param since when it was installed
 * @param contributions what it adds, such as "thread series: Club 36 tpi"
 * @param faults what it did wrong, newest first
 */
public record Module(
    String symbolicName,
    String title,
    String description,
    String version,
    String vendor,
    boolean dropped,
    String location,
    boolean working,
    String state,
    Instant since,
    List<String> contributions,
    List<Fault> faults) {

  /** Copies what could change. */
  public Module {
    contributions = List.copyOf(contributions);
    faults = List.copyOf(faults);
  }

  /** Returns whether this is a library that the suite uses, of no interest to most people. */
  public boolean library() {
    return !dropped && !symbolicName.startsWith("org.fettlebench.");
  }

  /**
   * Something a module did wrong.
   *
   * @param at when
   * @param doing what was being done
   * @param said what it said
   */
  public record Fault(Instant at, String doing, String said) {}
}
