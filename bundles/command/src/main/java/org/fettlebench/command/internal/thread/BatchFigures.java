package org.fettlebench.command.internal.thread;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.fettlebench.command.CommandException;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.strength.StressArea;
import org.fettlebench.threads.strength.ThreadStrength;
import org.fettlebench.threads.wires.MeasuringWires;
import org.fettlebench.threads.wires.WireSizes;

/** The figures that a batch can be asked for. */
final class BatchFigures {
  private static final double MOST_PERCENT = 100;
  private static final double SQUARE_MM_PER_SQUARE_INCH = 25.4 * 25.4;

  private final List<BatchFigure> all;

  /**
   * Takes what works the figures out.
   *
   * @param more figures beside those made here
   */
  BatchFigures(
      ThreadClasses classes,
      ThreadStrength strength,
      MeasuringWires wires,
      Optional<String> usualClass,
      BatchFigure... more) {
    List<BatchFigure> figures =
        new ArrayList<>(
            List.of(
                figure(
                    "basic",
                    List.of("major_", "pitch_", "effective_", "nut_minor_", "screw_minor_"),
                    List.of("threads_per_inch", "form", "standing"),
                    (call, line) -> basic(call.thread(), line)),
                new BatchLimits(classes, usualClass),
                new StressFigure(strength),
                new HoleFigure(),
                figure(
                    "wires",
                    List.of("best_wire_", "least_wire_", "most_wire_"),
                    List.of(),
                    (call, line) -> wires(wires, call.thread(), line))));
    figures.addAll(List.of(more));
    all = List.copyOf(figures);
  }

  /** Returns the words of all figures, such as {@code basic, limits}. */
  static String words() {
    return "basic, limits, stress, hole, wires, tapping, strength";
  }

  /**
   * Returns the figures of a list of words parted by commas.
   *
   * @throws CommandException if one is not known or there twice
   */
  List<BatchFigure> named(String words) {
    List<BatchFigure> named = new ArrayList<>();
    for (String word : words.split(",", -1)) {
      BatchFigure figure =
          all.stream()
              .filter(one -> one.word().equals(word.strip()))
              .findFirst()
              .orElseThrow(() -> unknown(word.strip()));
      if (named.contains(figure)) {
        throw new CommandException("--figures names " + figure.word() + " twice");
      }
      named.add(figure);
    }
    return named;
  }

  private CommandException unknown(String word) {
    return new CommandException(
        all.stream()
            .map(BatchFigure::word)
            .collect(Collectors.joining(", ", "--figures: \"" + word + "\" is none of ", "")));
  }

  private static BatchLine basic(ScrewThread thread, BatchLine line) {
    return line.length(thread.major())
        .length(thread.pitch())
        .length(thread.effective())
        .length(thread.minorInternal())
        .length(thread.minorExternal())
        .text(thread.threadsPerInch().orElse(""))
        .text(thread.form().word())
        .text(thread.source().standing().words());
  }

  private static BatchLine wires(MeasuringWires wires, ScrewThread thread, BatchLine line) {
    WireSizes sizes = wires.sizes(thread.form(), thread.pitch());
    return line.length(sizes.best()).length(sizes.least()).length(sizes.most());
  }

  /** Makes a figure that needs the thread alone: columns of lengths, then others. */
  private static BatchFigure figure(
      String word,
      List<String> lengths,
      List<String> others,
      BiFunction<ThreadCall, BatchLine, BatchLine> writing) {
    return new BatchFigure() {
      @Override
      public String word() {
        return word;
      }

      @Override
      public List<String> columns(LengthUnit unit) {
        List<String> columns = new ArrayList<>();
        lengths.forEach(name -> columns.add(name + unit.symbol()));
        others.forEach(name -> columns.add(name.equals("standing") ? word + "_standing" : name));
        return columns;
      }

      @Override
      public void write(ThreadCall called, BatchRow row, BatchLine line) {
        writing.apply(called, line);
      }
    };
  }

  /** The tensile stress area. */
  private record StressFigure(ThreadStrength strength) implements BatchFigure {
    @Override
    public String word() {
      return "stress";
    }

    @Override
    public List<String> columns(LengthUnit unit) {
      return List.of("stress_area_" + unit.symbol() + "2", "stress_area_standing");
    }

    @Override
    public void write(ThreadCall called, BatchRow row, BatchLine line) {
      StressArea area = strength.stressArea(called.thread());
      if (line.unit() == LengthUnit.MILLIMETRE) {
        line.number(area.mm2(), 4);
      } else {
        line.number(area.mm2() / SQUARE_MM_PER_SQUARE_INCH, 7);
      }
      line.text(area.source().standing().words());
    }
  }

  /** The hole for a per cent of thread, and the per cent of a hole. */
  private record HoleFigure() implements BatchFigure {
    @Override
    public String word() {
      return "hole";
    }

    @Override
    public List<String> columns(LengthUnit unit) {
      return List.of("hole_for_percent_" + unit.symbol(), "percent_of_hole");
    }

    @Override
    public List<String> reads() {
      return List.of("hole", "percent");
    }

    @Override
    public void write(ThreadCall called, BatchRow row, BatchLine line) {
      Optional<Double> percent = row.number("percent", 0, MOST_PERCENT);
      Optional<Length> hole = row.length("hole");
      if (percent.isEmpty() && hole.isEmpty()) {
        throw new CommandException("the hole needs a column percent, hole_mm or hole_in");
      }
      line.length(percent.map(called.thread()::holeFor));
      if (hole.isPresent()) {
        line.number(percentOf(called.thread(), hole.get()), 3);
      } else {
        line.empty(1);
      }
    }

    private static double percentOf(ScrewThread thread, Length hole) {
      if (!(hole.isPositive() && hole.compareTo(thread.major()) < 0)) {
        throw new CommandException(
            "hole "
                + hole
                + " is outside above 0 to below "
                + thread.major()
                + ", the major"
                + " diameter");
      }
      return thread.percentOfThread(hole);
    }
  }
}
