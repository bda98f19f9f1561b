package org.fettlebench.threads.wires;

import java.util.List;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;

/**
 * By how much a measurement over wires reads small because the anvils press the wires into the
 * flanks.
 *
 * @param overWires what is missing from the measurement; add it to what was measured
 * @param source of the rule
 * @param notes assumptions, to be shown with the figure
 */
public record WireGive(Length overWires, Source source, List<String> notes) {
  /** Copies what could change. */
  public WireGive {
    notes = List.copyOf(notes);
  }
}
