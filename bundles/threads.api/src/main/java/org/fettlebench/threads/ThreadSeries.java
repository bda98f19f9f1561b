package org.fettlebench.threads;

import java.util.List;
import org.fettlebench.tables.Source;

/**
 * Threads that share a form and a table or rule.
 *
 * @param id short name used in designations, such as {@code BA}
 * @param title for people
 * @param form profile
 * @param threads from the largest tradition downwards, as the table lists them
 * @param source of the table or rule
 * @param module symbolic name of the bundle that adds it
 */
public record ThreadSeries(
    String id,
    String title,
    ThreadForm form,
    List<ScrewThread> threads,
    Source source,
    String module) {
  /** Copies what could change. */
  public ThreadSeries {
    threads = List.copyOf(threads);
  }
}
