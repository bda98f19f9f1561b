package org.fettlebench.threads.internal;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;

/**
 * What a drawing writes around a thread: the hand taken out.
 *
 * @param rest what is left
 * @param leftHand whether it said left hand
 * @param hand whether it said any hand
 */
record CallText(String rest, boolean leftHand, boolean hand) {
  private static final Pattern HAND =
      Pattern.compile(
          "[\\s,-]+(?:(l\\.?\\s*h\\.?|left[\\s-]*hand(?:ed)?)|r\\.?\\s*h\\.?|right[\\s-]*hand(?:ed)?)"
              + "(?![a-z])(?:[\\s-]*thread)?",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern LENGTH =
      Pattern.compile(
          "^(.*\\S)\\s*[x\u00d7*]\\s*(\\d{1,3}(?:[\\s-]+\\d{1,2}/\\d{1,2}|/\\d{1,2}|\\.\\d{1,3})?)"
              + "\\s*(mm|in\\.?|inch(?:es)?|\")?(?:\\s*(?:long|lg))?$",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern SAYS_SERIES =
      Pattern.compile("(?i).*[a-z].*|\\s*#?[\\d./ ]+-\\s*\\d+(?:\\.\\d)?\\s*");

  /** A length behind a thread. */
  record Long(String thread, String number, Optional<LengthUnit> unit) {
    /** Returns the length where it can be one: a screw is not shorter than half its diameter. */
    Optional<Length> of(ScrewThread of) {
      LengthUnit usual =
          of.threadsPerInch().isPresent() || of.series().equals("BA")
              ? LengthUnit.INCH
              : LengthUnit.MILLIMETRE;
      try {
        return Optional.of(LengthReader.read(number, unit.orElse(usual)))
            .filter(length -> length.times(2).compareTo(of.major()) >= 0)
            .filter(length -> length.compareTo(of.major().times(100)) <= 0);
      } catch (MeasureException none) {
        return Optional.empty();
      }
    }
  }

  static CallText of(String typed) {
    Matcher hand = HAND.matcher(typed);
    if (!hand.find()) {
      return new CallText(typed, false, false);
    }
    String behind = typed.substring(hand.end()).strip();
    String before = typed.substring(0, hand.start()).strip();
    String joined =
        behind.isEmpty() || behind.startsWith("-") ? before + behind : before + " " + behind;
    return new CallText(joined, hand.group(1) != null, true);
  }

  /**
   * Takes off a length that stands behind a thread which says its series, or is written with a dash
   * as Unified threads are.
   */
  Optional<Long> length() {
    Matcher parts = LENGTH.matcher(rest.strip());
    if (!parts.matches() || !SAYS_SERIES.matcher(parts.group(1)).matches()) {
      return Optional.empty();
    }
    Optional<LengthUnit> unit =
        Optional.ofNullable(parts.group(3))
            .map(text -> text.equalsIgnoreCase("mm") ? LengthUnit.MILLIMETRE : LengthUnit.INCH);
    return Optional.of(new Long(parts.group(1), parts.group(2).replaceAll("[\\s-]+", " "), unit));
  }
}
