package org.fettlebench.command.internal.thread;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.command.CommandException;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.DiameterRange;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.ThreadSide;

/** Limits of screw and nut; a side that the class does not speak of stays empty. */
final class BatchLimits implements BatchFigure {
  private static final List<String> DIAMETERS = List.of("major", "effective", "minor");
  private static final int CELLS_OF_SIDE = 8;

  private final ThreadClasses classes;
  private final Optional<String> usual;

  /** Takes the class for rows that name none; without it the thread's usual fit is taken. */
  BatchLimits(ThreadClasses classes, Optional<String> usual) {
    this.classes = classes;
    this.usual = usual;
  }

  @Override
  public String word() {
    return "limits";
  }

  @Override
  public List<String> columns(LengthUnit unit) {
    List<String> columns = new ArrayList<>();
    for (ThreadSide side : ThreadSide.values()) {
      columns.add(side.word() + "_class");
      for (String diameter : DIAMETERS) {
        columns.add(side.word() + "_" + diameter + "_least_" + unit.symbol());
        columns.add(side.word() + "_" + diameter + "_most_" + unit.symbol());
      }
      columns.add(side.word() + "_standing");
    }
    return columns;
  }

  @Override
  public List<String> reads() {
    return List.of("class", "engagement");
  }

  @Override
  public void write(ThreadCall called, BatchRow row, BatchLine line) {
    String threadClass = threadClass(called, row);
    Optional<Length> engagement = row.length("engagement");
    List<LimitsOfThread> limits =
        engagement.isPresent()
            ? classes.limits(called.thread(), threadClass, engagement.get())
            : classes.limits(called.thread(), threadClass);
    for (ThreadSide side : ThreadSide.values()) {
      write(only(limits, side), line);
    }
  }

  private String threadClass(ThreadCall called, BatchRow row) {
    Optional<String> said = row.cell("class").or(called::threadClass).or(() -> usual);
    return said.or(() -> classes.classes(called.thread()).stream().findFirst())
        .orElseThrow(
            () ->
                new CommandException(
                    "series "
                        + called.thread().series()
                        + " names no standard for the limits of "
                        + called.thread().designation()));
  }

  private static Optional<LimitsOfThread> only(List<LimitsOfThread> limits, ThreadSide side) {
    LimitsOfThread found = null;
    for (LimitsOfThread one : limits) {
      if (one.side() == side && found != null) {
        throw new CommandException("name one class of the " + side.word() + " in a row");
      }
      found = one.side() == side ? one : found;
    }
    return Optional.ofNullable(found);
  }

  private static void write(Optional<LimitsOfThread> limits, BatchLine line) {
    if (limits.isEmpty()) {
      line.empty(CELLS_OF_SIDE);
      return;
    }
    LimitsOfThread found = limits.get();
    line.text(found.threadClass());
    write(found.major(), line);
    write(found.effective(), line);
    write(found.minor(), line);
    line.text(weakest(found).words());
  }

  private static void write(DiameterRange range, BatchLine line) {
    line.length(range.least()).length(range.most());
  }

  private static Standing weakest(LimitsOfThread limits) {
    return weaker(
        weaker(limits.major().source().standing(), limits.effective().source().standing()),
        limits.minor().source().standing());
  }

  private static Standing weaker(Standing one, Standing other) {
    return one.compareTo(other) >= 0 ? one : other;
  }
}
