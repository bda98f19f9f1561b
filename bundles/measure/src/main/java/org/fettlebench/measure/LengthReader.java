package org.fettlebench.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads lengths as they are typed in a workshop.
 *
 * <p>Understood, each with an optional sign and any spaces: {@code 3.97 mm}, {@code 3,97 mm},
 * {@code 5/32}, {@code 1 3/8 in}, {@code 1-3/8"}, {@code 1½ inch}, {@code 0.375"}, {@code .375 in},
 * {@code 10 thou}, {@code 25 um}. A fraction without a unit is always inches (common practice, no
 * source). A decimal comma is read as such unless it could part thousands: {@code 1,375 mm} is
 * refused, {@code 0,375 mm} and {@code 3,97 mm} are read. What is finer than 1 nm is rounded half
 * even to 1 nm; every 1/64 in is exact.
 */
public final class LengthReader {
  private static final int LONGEST = 40;
  private static final BigDecimal LARGEST = BigDecimal.valueOf(Long.MAX_VALUE);
  private static final String UNDERSTOOD =
      "understood are lengths such as 3.97 mm, 5/32, 1 3/8 in, 0.375\", 10 thou and 25 um";

  /** Nanometres in each unit, by the names it is typed with. */
  private static final Map<String, Long> UNITS =
      Map.ofEntries(
          Map.entry("mm", Length.NM_PER_MM),
          Map.entry("millimetre", Length.NM_PER_MM),
          Map.entry("millimetres", Length.NM_PER_MM),
          Map.entry("in", Length.NM_PER_INCH),
          Map.entry("in.", Length.NM_PER_INCH),
          Map.entry("inch", Length.NM_PER_INCH),
          Map.entry("inches", Length.NM_PER_INCH),
          Map.entry("\"", Length.NM_PER_INCH),
          Map.entry("''", Length.NM_PER_INCH),
          Map.entry("thou", Length.NM_PER_INCH / 1000),
          Map.entry("um", Length.NM_PER_MM / 1000),
          Map.entry("micron", Length.NM_PER_MM / 1000),
          Map.entry("microns", Length.NM_PER_MM / 1000));

  private static final Pattern FRACTION =
      Pattern.compile("([+-]?) ?(?:(\\d+)(?: |-))?(\\d+) ?/ ?(\\d+)(.*)");
  private static final Pattern DECIMAL =
      Pattern.compile("([+-]?) ?(\\d+(?:[.,]\\d*)?|[.,]\\d+)(?![.,\\d])(.*)");
  private static final Pattern COULD_PART_THOUSANDS = Pattern.compile("[1-9]\\d{0,2},\\d{3}");

  private LengthReader() {}

  /**
   * Reads a length that must carry its unit, or be an inch fraction.
   *
   * @throws MeasureException if the text is no length, or has no unit and is no fraction; the
   *     message names the text, what is wrong and what would be understood
   */
  public static Length read(String text) {
    return read(text, Optional.empty());
  }

  /**
   * Reads a length, taking {@code bare} as the unit of a decimal or whole number that carries none.
   * A fraction without a unit stays inches whatever {@code bare} is.
   *
   * @throws MeasureException if the text is no length
   */
  public static Length read(String text, LengthUnit bare) {
    return read(text, Optional.of(bare));
  }

  private static Length read(String typed, Optional<LengthUnit> bare) {
    if (typed.isBlank()) {
      throw new MeasureException("a length is missing; " + UNDERSTOOD);
    }
    if (typed.length() > LONGEST) {
      throw wrong(typed.substring(0, LONGEST) + "...", "is too long for a length");
    }
    String text = plain(typed);
    Matcher fraction = FRACTION.matcher(text);
    if (fraction.matches()) {
      return fraction(typed, fraction);
    }
    Matcher decimal = DECIMAL.matcher(text);
    if (decimal.matches()) {
      return decimal(typed, decimal, bare);
    }
    throw wrong(typed, "is no length");
  }

  private static Length fraction(String typed, Matcher parts) {
    BigDecimal numerator = new BigDecimal(parts.group(3));
    BigDecimal denominator = new BigDecimal(parts.group(4));
    if (denominator.signum() == 0) {
      throw wrong(typed, "divides by nothing");
    }
    BigDecimal wholes = BigDecimal.ZERO;
    if (parts.group(2) != null) {
      wholes = new BigDecimal(parts.group(2));
      if (numerator.compareTo(denominator) >= 0) {
        throw wrong(typed, "has a fraction of one or more behind its whole number");
      }
    }
    long unit = unit(typed, parts.group(5)).orElse(Length.NM_PER_INCH);
    BigDecimal nanometres =
        wholes
            .multiply(denominator)
            .add(numerator)
            .multiply(BigDecimal.valueOf(unit))
            .divide(denominator, 0, RoundingMode.HALF_EVEN);
    return signed(typed, parts.group(1), nanometres);
  }

  private static Length decimal(String typed, Matcher parts, Optional<LengthUnit> bare) {
    String number = parts.group(2);
    if (COULD_PART_THOUSANDS.matcher(number).matches()) {
      throw wrong(
          typed,
          "could mean "
              + number.replace(',', '.')
              + " or "
              + number.replace(",", "")
              + ": write it with a point, or without the comma");
    }
    long unit =
        unit(typed, parts.group(3))
            .or(() -> bare.map(LengthUnit::nanometres))
            .orElseThrow(
                () ->
                    wrong(
                        typed,
                        "has no unit: write " + typed.strip() + " mm or " + typed.strip() + " in"));
    BigDecimal value = new BigDecimal(number.replace(',', '.'));
    BigDecimal nanometres =
        value.multiply(BigDecimal.valueOf(unit)).setScale(0, RoundingMode.HALF_EVEN);
    return signed(typed, parts.group(1), nanometres);
  }

  private static Length signed(String typed, String sign, BigDecimal nanometres) {
    BigDecimal value = sign.equals("-") ? nanometres.negate() : nanometres;
    if (value.abs().compareTo(LARGEST) > 0) {
      throw wrong(typed, "is too large");
    }
    return Length.ofNanometres(value.longValueExact());
  }

  private static Optional<Long> unit(String typed, String text) {
    String name = text.strip().toLowerCase(Locale.ROOT);
    if (name.isEmpty()) {
      return Optional.empty();
    }
    Long nanometres = UNITS.get(name);
    if (nanometres == null) {
      throw wrong(typed, "ends in '" + text.strip() + "', which is no unit of length here");
    }
    return Optional.of(nanometres);
  }

  /** Turns the many signs people and spreadsheets write for one thing into that one. */
  private static String plain(String typed) {
    StringBuilder plain = new StringBuilder();
    for (char sign : typed.toCharArray()) {
      switch (sign) {
        case '\u2212', '\u2013', '\u2011', '\u2010' -> plain.append('-');
        case '\u2033', '\u201c', '\u201d' -> plain.append('"');
        case '\u2044' -> plain.append('/');
        case '\u00b5', '\u03bc' -> plain.append('u');
        case '\u00a0', '\u2009', '\u202f', '\t' -> plain.append(' ');
        default -> plain.append(vulgarFraction(sign));
      }
    }
    return plain.toString().strip().replaceAll(" +", " ");
  }

  /** Opens a one-character fraction such as ½; a space keeps it off the whole number before it. */
  private static String vulgarFraction(char sign) {
    String open = Normalizer.normalize(String.valueOf(sign), Normalizer.Form.NFKC);
    return open.indexOf('\u2044') > 0 ? " " + open.replace('\u2044', '/') : String.valueOf(sign);
  }

  private static MeasureException wrong(String typed, String what) {
    return new MeasureException("'" + typed.strip() + "' " + what + "; " + UNDERSTOOD);
  }
}
