package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.fettlebench.kits.FaultyFileException;
import org.fettlebench.kits.FaultyFileException.Fault;

/** Collects what is wrong with one file, so that all of it can be said at once. */
final class FaultList {
  private static final int LONGEST_VALUE = 60;

  /**
   * A place in the file.
   *
   * @param line from 1
   * @param column from 1
   */
  record At(int line, int column) {}

  private final String file;
  private final List<Fault> faults = new ArrayList<>();
  private final List<Fault> missing = new ArrayList<>();

  FaultList(String file) {
    this.file = file;
  }

  void add(At at, Object value, String wrong, String remedy) {
    faults.add(new Fault(file, at.line(), at.column(), shortened(value), wrong, sentence(remedy)));
  }

  /** Adds a fault for something that is not there at all. */
  void addMissing(At at, String wrong, String remedy) {
    missing.add(new Fault(file, at.line(), at.column(), "", wrong, remedy));
  }

  int size() {
    return faults.size() + missing.size();
  }

  boolean isEmpty() {
    return faults.isEmpty() && missing.isEmpty();
  }

  /**
   * Returns these faults together with lines that could not be read, less what only follows from
   * those: whatever else is on them, and whatever seems to be missing.
   */
  FaultList besides(FaultList unreadable) {
    Set<Integer> lines =
        unreadable.faults.stream().map(Fault::line).collect(Collectors.toUnmodifiableSet());
    FaultList both = new FaultList(file);
    both.faults.addAll(unreadable.faults);
    faults.stream().filter(fault -> !lines.contains(fault.line())).forEach(both.faults::add);
    if (lines.isEmpty()) {
      both.missing.addAll(missing);
    }
    return both;
  }

  /** Throws when there is anything to say, in the order of the file. */
  void throwIfAny() {
    if (!isEmpty()) {
      List<Fault> all = new ArrayList<>(faults);
      all.addAll(missing);
      all.sort(Comparator.comparingInt(Fault::line).thenComparingInt(Fault::column));
      throw new FaultyFileException(all.stream().distinct().toList());
    }
  }

  private static String sentence(String remedy) {
    return remedy.isEmpty()
        ? remedy
        : Character.toUpperCase(remedy.charAt(0)) + remedy.substring(1);
  }

  private static String shortened(Object value) {
    String text = String.valueOf(value).replaceAll("\\s+", " ").strip();
    return text.length() <= LONGEST_VALUE ? text : text.substring(0, LONGEST_VALUE) + "...";
  }
}
