package org.fettlebench.threads.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.threads.ScrewThread;

/** Threads that may have been meant by a designation that is not known. */
final class NearMisses {
  private static final double MM_PER_INCH = 25.4;
  private static final Pattern METRIC = Pattern.compile("m(\\d{1,4}(?:\\.\\d{1,6})?)");
  private static final Pattern FRACTION =
      Pattern.compile("(?:(\\d{1,3})\\+)?(\\d{1,4})/(\\d{1,4})");

  /** What a doubling of the diameter weighs against letters changed. */
  private static final double DOUBLING = 3;

  private record Miss(ScrewThread thread, double distance) {}

  private NearMisses() {}

  static List<ScrewThread> of(String designation, int most, List<DesignationIndex.Entry> entries) {
    if (!(most >= 0)) {
      throw new IllegalArgumentException(most + " near misses is below 0");
    }
    String key = DesignationText.key(designation);
    if (key.isEmpty()) {
      return List.of();
    }
    Optional<Double> diameterMm = diameterMm(key);
    // More than about half the letters changed is another word, not a slip.
    double furthest = Math.max(1, key.length() / 2.0);
    return entries.stream()
        .map(entry -> new Miss(entry.thread(), letters(key, entry)))
        .filter(miss -> miss.distance() <= furthest)
        .map(
            miss -> new Miss(miss.thread(), miss.distance() + doublings(diameterMm, miss.thread())))
        .sorted(Comparator.comparingDouble(Miss::distance))
        .limit(most)
        .map(Miss::thread)
        .toList();
  }

  private static double letters(String key, DesignationIndex.Entry entry) {
    return entry.spellings().all().stream().mapToInt(way -> letters(key, way)).min().orElse(99);
  }

  /** What is only begun, such as #4 or 5/16, is as near as one letter. */
  private static int letters(String key, String way) {
    return key.length() > 1 && key.length() < way.length() && way.startsWith(key)
        ? 1
        : changes(key, way);
  }

  private static double doublings(Optional<Double> diameterMm, ScrewThread thread) {
    return diameterMm
        .map(mm -> DOUBLING * Math.abs(Math.log(mm / thread.major().millimetres()) / Math.log(2)))
        .orElse(0.0);
  }

  private static Optional<Double> diameterMm(String key) {
    Matcher metric = METRIC.matcher(key);
    if (metric.find()) {
      return positive(Double.parseDouble(metric.group(1)));
    }
    Matcher inches = FRACTION.matcher(key);
    if (inches.find() && Integer.parseInt(inches.group(3)) > 0) {
      double wholes = inches.group(1) == null ? 0 : Integer.parseInt(inches.group(1));
      double part = Double.parseDouble(inches.group(2)) / Double.parseDouble(inches.group(3));
      return positive((wholes + part) * MM_PER_INCH);
    }
    return Optional.empty();
  }

  private static Optional<Double> positive(double mm) {
    return mm > 0 ? Optional.of(mm) : Optional.empty();
  }

  /** Returns the least number of letters to put in, take out or change (Levenshtein, 1965). */
  static int changes(String from, String to) {
    int[] row = new int[to.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= to.length(); j++) {
        int changed = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[to.length()];
  }
}
