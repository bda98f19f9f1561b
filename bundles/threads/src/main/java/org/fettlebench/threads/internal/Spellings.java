package org.fettlebench.threads.internal;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;

/**
 * All the ways in which a thread may be written, as {@link DesignationText#key} leaves them.
 *
 * @param exact ways that use the size as the series writes it
 * @param dashed ways without the series, with a dash before the threads per inch
 * @param loose ways with "No" added to or left off a number, without the pitch or with it behind
 *     the series, or in decimal inches
 */
record Spellings(Set<String> exact, Set<String> dashed, Set<String> loose) {

  /**
   * Spells a thread out.
   *
   * @param names of its series, as {@link DesignationText#key} leaves them
   */
  static Spellings of(ScrewThread thread, List<String> names) {
    Set<String> exact = new LinkedHashSet<>();
    Set<String> dashed = new LinkedHashSet<>();
    Set<String> loose = new LinkedHashSet<>();
    String size = DesignationText.key(thread.size());
    exact.add(DesignationText.key(thread.designation()));
    for (String whole : withPitch(size, thread)) {
      both(exact, whole, names);
      (whole.contains("-") ? dashed : exact).addAll(nameless(whole, size));
    }
    both(exact, size, names);
    otherNumber(size, thread, names, loose);
    int pitchAt = size.indexOf('x');
    if (pitchAt > 0) {
      both(loose, size.substring(0, pitchAt), names);
    }
    loose.addAll(pitchLast(size, thread, names));
    if (size.startsWith("m")) {
      names.forEach(name -> loose.add(name + size.substring(1)));
    }
    DecimalInches.of(size, thread, names, loose);
    return new Spellings(exact, dashed, loose);
  }

  /** Returns every way, for measuring how far off something typed is. */
  Set<String> all() {
    Set<String> all = new LinkedHashSet<>(exact);
    all.addAll(dashed);
    all.addAll(loose);
    return all;
  }

  /** A metric size says by its M what it is; others need their pitch beside them. */
  private static List<String> nameless(String whole, String size) {
    return whole.equals(size) && !size.startsWith("m") && !size.contains("x")
        ? List.of()
        : List.of(whole);
  }

  private static List<String> withPitch(String size, ScrewThread thread) {
    if (size.contains("x")) {
      return List.of(size, size.replace('x', '-'));
    }
    if (thread.threadsPerInch().isPresent()) {
      return pitches(thread).stream()
          .flatMap(tpi -> Stream.of(size + "x" + tpi, size + "-" + tpi))
          .toList();
    }
    if (thread.form() == ThreadForm.ISO) {
      String pitch = DesignationText.key(thread.pitch().toString());
      return List.of(size, size + "x" + pitch, size + "-" + pitch);
    }
    return List.of();
  }

  /** Threads per inch; a half is written 4.5 and 4 1/2. */
  static List<String> pitches(ScrewThread thread) {
    String tpi = DesignationText.key(thread.threadsPerInch().orElse(""));
    return tpi.endsWith(".5")
        ? List.of(tpi, tpi.substring(0, tpi.length() - 2) + "+1/2")
        : tpi.isEmpty() ? List.of() : List.of(tpi);
  }

  /** Size, series, threads per inch: 1/4 BSF 26. */
  private static List<String> pitchLast(String size, ScrewThread thread, List<String> names) {
    if (thread.threadsPerInch().isEmpty()) {
      return List.of();
    }
    String tpi = DesignationText.key(thread.threadsPerInch().get());
    String base = size.replaceFirst("x.*", "");
    return names.stream().map(name -> base + name + tpi).toList();
  }

  private static void otherNumber(
      String size, ScrewThread thread, List<String> names, Set<String> loose) {
    List<String> others = new ArrayList<>();
    if (size.startsWith("#")) {
      others.add(size.substring(1));
    } else if (size.matches("\\d+") && thread.threadsPerInch().isEmpty()) {
      others.add("#" + size);
    }
    for (String other : others) {
      both(loose, other, names);
      for (String whole : withPitch(other, thread)) {
        both(loose, whole, names);
        loose.addAll(nameless(whole, other));
      }
    }
  }

  static void both(Set<String> keys, String size, List<String> names) {
    for (String name : names) {
      keys.add(size + name);
      keys.add(name + size);
    }
  }
}
