package org.fettlebench.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Hatching lines at 45 degrees clipped to an outline with holes; pure geometry. */
final class Hatching {
  private static final double ROOT_HALF = Math.sqrt(0.5);

  private Hatching() {}

  /** A hatching line, in the co-ordinates of the outline. */
  record Line(double x1, double y1, double x2, double y2) {}

  /**
   * Returns the lines inside the rings by the even-odd rule.
   *
   * @param rings closed rings as x, y, x, y ...
   * @param spacing between lines, above 0
   */
  static List<Line> lines(List<double[]> rings, double spacing) {
    return lines(rings, spacing, new Within(0, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
  }

  /**
   * Which lines are wanted, by their distance across the hatching from zero.
   *
   * @param phase distance of one of them
   * @param low none before
   * @param high none after
   */
  record Within(double phase, double low, double high) {
    /** Returns the lines that meet a sheet, one of which runs through a point of it. */
    static Within sheet(double x, double y, double width, double height) {
      return new Within(across(x, y), 0, across(width, height));
    }
  }

  static List<Line> lines(List<double[]> rings, double spacing, Within within) {
    if (!(spacing > 0)) {
      throw new IllegalArgumentException("hatching needs a spacing above 0, not " + spacing);
    }
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double[] ring : rings) {
      for (int i = 0; i < ring.length; i += 2) {
        low = Math.min(low, across(ring[i], ring[i + 1]));
        high = Math.max(high, across(ring[i], ring[i + 1]));
      }
    }
    List<Line> lines = new ArrayList<>();
    // Whole steps from one line, so that neighbouring areas share their lines.
    double phase = within.phase();
    double first = Math.max(low, within.low());
    double last = Math.min(high, within.high());
    for (double at = phase + Math.ceil((first - phase) / spacing) * spacing;
        at < last;
        at += spacing) {
      addLines(lines, rings, at);
    }
    return lines;
  }

  /** Distance of a point across the hatching direction. */
  private static double across(double x, double y) {
    return (x + y) * ROOT_HALF;
  }

  private static double along(double x, double y) {
    return (x - y) * ROOT_HALF;
  }

  private static void addLines(List<Line> lines, List<double[]> rings, double at) {
    double[] cuts = rings.stream().flatMapToDouble(ring -> cuts(ring, at)).sorted().toArray();
    for (int i = 0; i + 1 < cuts.length; i += 2) {
      lines.add(line(at, cuts[i], cuts[i + 1]));
    }
  }

  private static java.util.stream.DoubleStream cuts(double[] ring, double at) {
    double[] found = new double[ring.length / 2];
    int count = 0;
    for (int i = 0; i < ring.length; i += 2) {
      int j = (i + 2) % ring.length;
      double from = across(ring[i], ring[i + 1]) - at;
      double to = across(ring[j], ring[j + 1]) - at;
      if (from < 0 != to < 0) {
        double share = from / (from - to);
        double start = along(ring[i], ring[i + 1]);
        found[count++] = start + share * (along(ring[j], ring[j + 1]) - start);
      }
    }
    return Arrays.stream(found, 0, count);
  }

  private static Line line(double at, double from, double to) {
    return new Line(
        (at + from) * ROOT_HALF,
        (at - from) * ROOT_HALF,
        (at + to) * ROOT_HALF,
        (at - to) * ROOT_HALF);
  }
}
