package org.fettlebench.threads;

import java.util.List;
import org.fettlebench.tables.Source;

/**
 * Threads that share a form and a table or rule.
 *
 * @param id short name used in designations, such as {@code BA}; never blank
 * @param title for people; never blank
 * @param form profile
 * @param threads in the order in which the table lists them; at least one
 * @param source of the table or rule; a thread may name its own
 * @param module symbolic name of the bundle that adds it
 */
public record ThreadSeries(
    String id,
    String title,
    ThreadForm form,
    List<ScrewThread> threads,
    Source source,
    String module) {
  /**
   * Copies what could change.
   *
   * @throws IllegalArgumentException if a name is blank or there are no threads
   */
  public ThreadSeries {
    threads = List.copyOf(threads);
    if (id.isBlank() || title.isBlank() || threads.isEmpty()) {
      throw new IllegalArgumentException(
          "thread series '" + id + "' needs an id, a title and at least one thread");
    }
  }
}
