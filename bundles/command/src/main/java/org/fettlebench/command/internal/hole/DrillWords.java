package org.fettlebench.command.internal.hole;

import java.util.LinkedHashMap;
import java.util.Map;
import org.fettlebench.command.Call;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.internal.Data;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;

/** Reads drills out of typed words, and tells them as data. */
public final class DrillWords {
  private DrillWords() {}

  /**
   * Reads a drill's name or a length out of an operand.
   *
   * @throws CommandException if it is neither
   */
  public static DrillSize read(Drills drills, Call call, String operand) {
    String typed = call.operand(operand).orElseThrow();
    return drills.find(typed).orElseGet(() -> bySize(drills, call, operand, typed));
  }

  private static DrillSize bySize(Drills drills, Call call, String operand, String typed) {
    try {
      Length length = call.length(operand).orElseThrow();
      if (!length.isPositive()) {
        throw new CommandException("a drill of " + length + " cannot be; give a size above 0");
      }
      return drills.ofDiameter(length);
    } catch (MeasureException e) {
      throw new CommandException(
          "\""
              + typed
              + "\" is no drill and no length; say it like 5/32, 4.1 mm, No 22, F or 0.161 in",
          e);
    }
  }

  /** Returns a drill as data: its names and diameter. */
  public static Map<String, Object> data(DrillSize drill) {
    return new LinkedHashMap<>(
        Data.of(
            "name", drill.name(),
            "names", drill.names(),
            "diameterMm", Data.mm(drill.diameter()),
            "diameterIn", Data.in(drill.diameter())));
  }

  /** Returns all names of a drill in one line. */
  public static String names(DrillSize drill) {
    return String.join(" = ", drill.names());
  }
}
