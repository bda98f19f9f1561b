package org.fettlebench.threads.internal;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;

/**
 * Threads that no series lists, by diameter, pitch and form: Unified of constant pitch (UN) and
 * special (UNS), metric of any of the standard's pitches (M), and the Whitworth and British
 * Association forms at any size.
 */
final class ThreadsByRule {
  /** The limits that threads by rule follow, by their series. */
  static final Map<String, String> LIMITS =
      Map.of(
          "UN", "ASME B1.1 2B",
          "UNS", "ASME B1.1 2B",
          "M", "ISO 965-1 6H",
          "Whit", "BS 84",
          "BA form", "BS 93");

  private static final String INCHES =
      "((?:\\d{1,2}\\+)?\\d{1,3}/\\d{1,3}|\\d|\\d\\.\\d{1,4})[x-](\\d{1,2}(?:\\.\\d{1,2})?)";
  private static final String MILLIMETRES =
      "(\\d{1,3}(?:\\.\\d{1,3})?)[x-](\\d{1,2}(?:\\.\\d{1,3})?)";

  /** Threads per inch of the constant-pitch series (ASME B1.1). */
  private static final Set<String> CONSTANT = Set.of("4", "6", "8", "12", "16", "20", "28", "32");

  /** Pitches of the general plan (ISO 261), in millimetres. */
  private static final Set<String> METRIC_PITCHES =
      Set.of(
          "0.2", "0.25", "0.3", "0.35", "0.4", "0.45", "0.5", "0.6", "0.7", "0.75", "0.8", "1",
          "1.25", "1.5", "1.75", "2", "2.5", "3", "3.5", "4", "4.5", "5", "5.5", "6", "8");

  private static final double LARGEST_IN = 6;

  /** From where to where the tolerances of ISO 965-1 go, in millimetres. */
  private static final double SMALLEST_MM = 1;

  private static final double LARGEST_MM = 355;

  private record Rule(Pattern pattern, Function<Matcher, Optional<ScrewThread>> thread) {}

  private static final List<Rule> RULES =
      List.of(
          rule("(#\\d{1,2})[x-](\\d{1,2}(?:\\.\\d{1,2})?)(uns?)", ThreadsByRule::unified),
          rule(INCHES + "(uns?)", ThreadsByRule::unified),
          rule(INCHES + "(?:whit(?:worth)?)(?:form)?", ThreadsByRule::whitworth),
          rule("m" + MILLIMETRES, ThreadsByRule::metric),
          rule(MILLIMETRES + "baform", ThreadsByRule::britishAssociation));

  private ThreadsByRule() {}

  private static Rule rule(String pattern, Function<Matcher, Optional<ScrewThread>> thread) {
    return new Rule(Pattern.compile(pattern), thread);
  }

  /** Returns the thread of a designation brought to {@link DesignationText#key}. */
  static Optional<ScrewThread> find(String key) {
    for (Rule rule : RULES) {
      Matcher parts = rule.pattern().matcher(key);
      if (parts.matches()) {
        return rule.thread().apply(parts);
      }
    }
    return Optional.empty();
  }

  private static Optional<ScrewThread> unified(Matcher parts) {
    if (parts.group(3).equals("un") && !CONSTANT.contains(parts.group(2))) {
      return Optional.empty();
    }
    String series = parts.group(3).equals("un") ? "UN" : "UNS";
    String size = parts.group(1).replace('+', ' ') + "-" + parts.group(2);
    return inches(parts, ThreadForm.UNIFIED, series, size, size + " " + series);
  }

  private static Optional<ScrewThread> whitworth(Matcher parts) {
    String size = parts.group(1).replace('+', ' ') + " x " + parts.group(2);
    return inches(parts, ThreadForm.WHITWORTH, "Whit", size, size + " Whit");
  }

  private static Optional<ScrewThread> inches(
      Matcher parts, ThreadForm form, String series, String size, String designation) {
    double tpi = Double.parseDouble(parts.group(2));
    return majorInches(parts.group(1))
        // The root must be left; beyond the standard's sizes nothing is made up.
        .filter(major -> tpi >= 3 && tpi <= 80 && major.inches() * tpi > 3)
        .filter(major -> major.inches() <= LARGEST_IN)
        .map(
            major ->
                thread(
                    new Named(series, size, designation, form),
                    major,
                    25.4 / tpi,
                    Optional.of(parts.group(2))));
  }

  private static Optional<Length> majorInches(String size) {
    if (size.startsWith("#")) {
      int number = Integer.parseInt(size.substring(1));
      // 0.060 in + number x 0.013 in (ASME B1.1), to No 12.
      return number <= 12
          ? Optional.of(Length.ofInchFraction(60 + 13L * number, 1000))
          : Optional.empty();
    }
    if (size.contains(".")) {
      return Optional.of(Length.ofInches(Double.parseDouble(size)));
    }
    String[] wholeAndPart = size.contains("/") ? size.split("\\+") : new String[] {size + "/1"};
    long whole = wholeAndPart.length == 2 ? Long.parseLong(wholeAndPart[0]) : 0;
    String[] part = wholeAndPart[wholeAndPart.length - 1].split("/");
    long under = Long.parseLong(part[1]);
    return under == 0
        ? Optional.empty()
        : Optional.of(Length.ofInchFraction(whole * under + Long.parseLong(part[0]), under));
  }

  private static Optional<ScrewThread> metric(Matcher parts) {
    String size = "M" + parts.group(1) + " x " + parts.group(2);
    return METRIC_PITCHES.contains(parts.group(2))
        ? millimetres(parts, new Named("M", size, size, ThreadForm.ISO))
        : Optional.empty();
  }

  private static Optional<ScrewThread> britishAssociation(Matcher parts) {
    String size = parts.group(1) + " x " + parts.group(2);
    return millimetres(
        parts, new Named("BA form", size, size + " BA form", ThreadForm.BRITISH_ASSOCIATION));
  }

  private static Optional<ScrewThread> millimetres(Matcher parts, Named named) {
    double major = Double.parseDouble(parts.group(1));
    double pitch = Double.parseDouble(parts.group(2));
    boolean hasRoot = pitch > 0 && major > 3 * pitch;
    // British Association threads go on below a millimetre.
    double smallest = named.form() == ThreadForm.ISO ? SMALLEST_MM : 0;
    return hasRoot && major >= smallest && major <= LARGEST_MM
        ? Optional.of(thread(named, Length.ofMillimetres(major), pitch, Optional.empty()))
        : Optional.empty();
  }

  /** What a thread is called. */
  private record Named(String series, String size, String designation, ThreadForm form) {}

  private static ScrewThread thread(
      Named named, Length major, double pitchMm, Optional<String> threadsPerInch) {
    ThreadForm form = named.form();
    return new ScrewThread(
        named.series(),
        named.size(),
        named.designation(),
        form,
        major,
        Length.ofMillimetres(pitchMm),
        threadsPerInch,
        less(major, form.effectiveDropPerPitch(), pitchMm),
        less(major, 2 * form.internalDepthPerPitch(), pitchMm),
        less(major, 2 * form.externalDepthPerPitch(), pitchMm),
        new Source(
            standard(form) + " basic form, at a size and pitch that no series lists",
            Standing.RULE));
  }

  private static String standard(ThreadForm form) {
    return switch (form) {
      case ISO -> "ISO 68-1";
      case UNIFIED -> "ASME B1.1";
      case WHITWORTH -> "BS 84";
      case BRITISH_ASSOCIATION -> "BS 93";
    };
  }

  private static Length less(Length major, double depths, double pitchMm) {
    return Length.ofMillimetres(major.millimetres() - depths * pitchMm);
  }
}
