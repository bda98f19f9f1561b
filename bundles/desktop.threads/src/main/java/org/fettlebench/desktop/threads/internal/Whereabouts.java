package org.fettlebench.desktop.threads.internal;

import org.fettlebench.club.StockLine;

/** Says where a tool is. */
final class Whereabouts {
  private Whereabouts() {}

  static boolean ready(StockLine line) {
    return line.present() > 0 && line.condition() == StockLine.Condition.GOOD;
  }

  /** Returns in which order a person would rather have it: in and good first. */
  static int rank(StockLine line) {
    return (line.present() > 0 ? 0 : 1) + (line.condition() == StockLine.Condition.GOOD ? 0 : 2);
  }

  static String words(StockLine line) {
    String worn = line.condition() == StockLine.Condition.WORN ? "worn, " : "";
    return line.present() > 0 ? worn + line.place() : worn + "out with " + line.holder();
  }
}
