package org.fettlebench.threads.internal;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.text.Normalizer;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Brings the many ways of writing one designation to one: small letters, no spaces, dots or inch
 * marks, {@code x} between size and pitch, {@code #} for "No", {@code 1+1/8} for a mixed number,
 * fractions in their lowest terms, no class of thread.
 */
final class DesignationText {
  /** More than any designation needs; keeps what is typed or pasted by mistake cheap. */
  static final int LONGEST = 60;

  private static final Pattern NUMBER_SIGN =
      Pattern.compile("(?<![a-z])(?:no|nos|nr|number)\\s*\\.?\\s*(?=\\d)");
  private static final Pattern WORDS_WITHOUT_WEIGHT =
      Pattern.compile(
          "(?<![a-z])(?:inches|inch|in|tpi|threads|thread|mm|size|pitch)(?![a-z])"
              + "|(?<=\\d)\\s*t(?![a-z])|(?:(?:iso|metric)\\s+)+(?=m\\s*\\d)|(?<=^m[\\d. x]{1,20})\\s(?:iso|metric)$");
  // Behind a letter only one digit belongs to the size: G1 1/4, but not in a series named FINE32.
  private static final Pattern MIXED_NUMBER =
      Pattern.compile("((?<![a-z\\d])\\d{1,3}|(?<=[a-z])\\d)(?:\\s*-\\s*|\\s+)(\\d+/\\d)");
  // 10 32 UNF is 10-32 UNF, and M6 0 is not M60; but FINE32 1/4 begins with a series.
  private static final Pattern TWO_FIGURES =
      Pattern.compile("((?:^|[^a-z\\d]|(?<![a-z])[a-z])\\d+)\\s+(?=\\d)");
  private static final Pattern BY = Pattern.compile("(?<=\\d)\\s*by\\s*(?=\\d)");
  private static final Pattern SPACES = Pattern.compile("\\s+");
  private static final Pattern DASH_NOT_BETWEEN =
      // Not before a size or pitch: -1 BA and M6x-1 are no threads.
      Pattern.compile("(?<!^)-+(?=[a-z])|(?<=[a-wyz])-+|-+$");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");
  private static final Pattern BARE_DECIMAL = Pattern.compile("(^|x|-)\\s*\\.(?=\\d)");
  private static final Pattern DOT_BEHIND_LETTER = Pattern.compile("(?<=[a-z#])\\s*\\.");
  private static final Pattern DOT_AT_END = Pattern.compile("\\.(?!\\d)");

  /** A dot between a whole number and a fraction, as pipe threads are listed: 1.1/4. */
  private static final Pattern DOTTED_MIXED =
      Pattern.compile("(?<![\\d.])(\\d{1,3})\\.(?=\\d{1,2}/\\d)");

  /**
   * A metric pitch with a fraction in one sign: M10 x 1¼. Spelt out, 1 1/4 is a length in inches.
   */
  private static final Pattern METRIC_QUARTERS =
      Pattern.compile(
          "^(\\s*m\\s*\\d[\\d.,]*\\s*[x\u00d7*]\\s*)(\\d?)\\s*([\u00bc-\u00be])(?=\\s*(?:-.*)?$)",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern FRACTION = Pattern.compile("(\\d{1,9})/(\\d{1,9})");
  private static final Pattern DECIMAL = Pattern.compile("\\d{1,9}\\.\\d{1,9}");

  private DesignationText() {}

  /** Returns the one way of writing; may be empty. */
  static String key(String typed) {
    if (typed.length() > LONGEST) {
      return "";
    }
    return keyOf(parted(typed).thread());
  }

  /** Returns the one way of writing of what {@link #parted} left as the thread. */
  static String keyOf(String thread) {
    if (thread.chars().allMatch(sign -> sign >= '0' && sign <= '9')) {
      // Most of what is spelt out are plain numbers, and they are spelt already.
      return thread;
    }
    // Lists run to hundreds of thousands: a pattern is tried only where its signs are.
    String text = thread.toLowerCase(Locale.ROOT);
    text = text.indexOf('n') < 0 ? text : NUMBER_SIGN.matcher(text).replaceAll("#");
    if (text.indexOf('.') >= 0) {
      text = text.indexOf('/') < 0 ? text : DOTTED_MIXED.matcher(text).replaceAll("$1 ");
      text = withoutDots(text);
    }
    text = mayHoldWords(text) ? WORDS_WITHOUT_WEIGHT.matcher(text).replaceAll(" ") : text;
    text = text.contains("by") ? BY.matcher(text).replaceAll("x") : text;
    if (text.indexOf('/') >= 0) {
      text = MIXED_NUMBER.matcher(text).replaceAll("$1+$2");
      text = replace(FRACTION, text, DesignationText::lowestTerms);
    }
    text = text.indexOf('.') < 0 ? text : replace(DECIMAL, text, DesignationText::shortest);
    if (text.chars().anyMatch(sign -> sign <= ' ')) {
      text = TWO_FIGURES.matcher(text).replaceAll("$1-");
      text = SPACES.matcher(text).replaceAll("");
    }
    return text.indexOf('-') < 0 ? text : DASH_NOT_BETWEEN.matcher(text).replaceAll("");
  }

  /** Each of the words has an i or a t but mm. */
  private static boolean mayHoldWords(String text) {
    return text.indexOf('i') >= 0 || text.indexOf('t') >= 0 || text.contains("mm");
  }

  /** Parts the class of thread written behind, as the standard writes it. */
  static ClassText parted(String typed) {
    String plain = (isPlain(typed) ? typed : plainSigns(decimalPitch(typed))).strip();
    return ClassText.of(
        plain.indexOf(',') < 0 ? plain : DECIMAL_COMMA.matcher(plain).replaceAll("."));
  }

  private static String decimalPitch(String typed) {
    return replace(
        METRIC_QUARTERS,
        typed,
        pitch -> {
          int quarters = pitch.group(3).charAt(0) - '\u00bc' + 1;
          String whole = pitch.group(2).isEmpty() ? "0" : pitch.group(2);
          return pitch.group(1) + whole + "." + 25 * quarters;
        });
  }

  /** Whether no sign is one that {@link #plainSigns} changes. */
  private static boolean isPlain(String text) {
    return text.chars().allMatch(sign -> sign < 0x80 && "*\"'()".indexOf(sign) < 0);
  }

  private static String plainSigns(String text) {
    StringBuilder plain = new StringBuilder();
    for (char sign : text.toCharArray()) {
      switch (sign) {
        case '\u00d7', '\u2715', '\u2a2f', '*' -> plain.append('x');
        case '\u2212', '\u2013', '\u2014', '\u2011', '\u2010' -> plain.append('-');
        case '\u2033', '\u201c', '\u201d', '"', '\'' -> plain.append(' ');
        case '\u2044' -> plain.append('/');
        case '\u00b0' -> plain.append('o');
        case '\u2116' -> plain.append('#');
        case '\u00a0', '\u2009', '\u202f', '(', ')' -> plain.append(' ');
        default -> plain.append(openFraction(sign));
      }
    }
    return plain.toString();
  }

  /** Opens a fraction in one sign, and brings wide and raised signs to plain ones. */
  private static String openFraction(char sign) {
    if (sign < 0x80) {
      return String.valueOf(sign);
    }
    String open = Normalizer.normalize(String.valueOf(sign), Normalizer.Form.NFKC);
    if (open.indexOf('\u2044') > 0) {
      return " " + open.replace('\u2044', '/');
    }
    return open.length() == 1 ? open : String.valueOf(sign);
  }

  /** Takes away the dots of abbreviations and gives a bare decimal its nought. */
  private static String withoutDots(String text) {
    String nought = BARE_DECIMAL.matcher(text).replaceAll("$10.");
    String whole = DOT_BEHIND_LETTER.matcher(nought).replaceAll("");
    return DOT_AT_END.matcher(whole).replaceAll("");
  }

  private static String lowestTerms(MatchResult fraction) {
    BigInteger over = new BigInteger(fraction.group(1));
    BigInteger under = new BigInteger(fraction.group(2));
    BigInteger common = over.gcd(under);
    return common.signum() == 0 || under.signum() == 0
        ? fraction.group()
        : over.divide(common) + "/" + under.divide(common);
  }

  private static String shortest(MatchResult decimal) {
    return new BigDecimal(decimal.group()).stripTrailingZeros().toPlainString();
  }

  private static String replace(Pattern pattern, String text, Function<MatchResult, String> by) {
    return pattern.matcher(text).replaceAll(match -> by.apply(match));
  }
}
