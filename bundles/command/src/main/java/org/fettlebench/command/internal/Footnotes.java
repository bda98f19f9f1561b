package org.fettlebench.command.internal;

import java.util.ArrayList;
import java.util.List;

/** Sources and remarks of many rows, each said once under the rows, with a mark in the row. */
public final class Footnotes {
  private final List<String> notes = new ArrayList<>();

  /** Returns the mark of a note, such as {@code [1]}; the same note has the same mark. */
  public String mark(String note) {
    if (!notes.contains(note)) {
      notes.add(note);
    }
    return "[" + (notes.indexOf(note) + 1) + "]";
  }

  /** Returns the notes a line each, with a line end before each. */
  public String text() {
    StringBuilder text = new StringBuilder();
    notes.forEach(note -> text.append("\n").append(mark(note)).append(' ').append(note));
    return text.toString();
  }
}
