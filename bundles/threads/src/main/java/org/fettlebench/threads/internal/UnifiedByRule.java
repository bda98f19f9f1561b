package org.fettlebench.threads.internal;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;

/** Unified threads that no series lists: any size at a constant pitch (UN), or special (UNS). */
final class UnifiedByRule {
  private static final Pattern KEY =
      Pattern.compile(
          "(#\\d{1,2}|(?:\\d\\+)?\\d{1,2}/\\d{1,2}|\\d)[x-](\\d{1,2}(?:\\.\\d)?)(uns?)");

  /** Threads per inch of the constant-pitch series (ASME B1.1). */
  private static final Set<String> CONSTANT = Set.of("4", "6", "8", "12", "16", "20", "28", "32");

  private static final double LARGEST_IN = 6;

  private UnifiedByRule() {}

  /** Returns the thread of a designation brought to {@link DesignationText#key}. */
  static Optional<ScrewThread> find(String key) {
    Matcher parts = KEY.matcher(key);
    if (!parts.matches() || parts.group(3).equals("un") && !CONSTANT.contains(parts.group(2))) {
      return Optional.empty();
    }
    double tpi = Double.parseDouble(parts.group(2));
    return major(parts.group(1))
        // The root must be left; beyond the standard's sizes nothing is made up.
        .filter(major -> tpi >= 3 && tpi <= 80 && major.inches() * tpi > 3)
        .map(major -> thread(parts, major, 25.4 / tpi));
  }

  private static Optional<Length> major(String size) {
    if (size.startsWith("#")) {
      int number = Integer.parseInt(size.substring(1));
      // 0.060 in + number x 0.013 in (ASME B1.1), to No 12.
      return number <= 12
          ? Optional.of(Length.ofInchFraction(60 + 13L * number, 1000))
          : Optional.empty();
    }
    String[] wholeAndPart = size.contains("/") ? size.split("\\+") : new String[] {size + "/1"};
    long whole = wholeAndPart.length == 2 ? Long.parseLong(wholeAndPart[0]) : 0;
    String[] part = wholeAndPart[wholeAndPart.length - 1].split("/");
    long under = Long.parseLong(part[1]);
    if (under == 0) {
      return Optional.empty();
    }
    Length major = Length.ofInchFraction(whole * under + Long.parseLong(part[0]), under);
    return Optional.of(major).filter(length -> length.inches() <= LARGEST_IN);
  }

  private static ScrewThread thread(Matcher parts, Length major, double pitchMm) {
    String series = parts.group(3).toUpperCase(Locale.ROOT);
    String size = parts.group(1).replace('+', ' ') + "-" + parts.group(2);
    ThreadForm form = ThreadForm.UNIFIED;
    return new ScrewThread(
        series,
        size,
        size + " " + series,
        form,
        major,
        Length.ofMillimetres(pitchMm),
        Optional.of(parts.group(2)),
        less(major, form.effectiveDropPerPitch(), pitchMm),
        less(major, 2 * form.internalDepthPerPitch(), pitchMm),
        less(major, 2 * form.externalDepthPerPitch(), pitchMm),
        new Source(
            "ASME B1.1 basic form, at a size and pitch that no series lists", Standing.RULE));
  }

  private static Length less(Length major, double depths, double pitchMm) {
    return Length.ofMillimetres(major.millimetres() - depths * pitchMm);
  }
}
