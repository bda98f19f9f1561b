package org.fettlebench.threads.internal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;

/** Sizes in decimal inches: .250-20, .190-32, .25 BSF, 0.3125 x 32 ME. */
final class DecimalInches {
  private static final BigDecimal NM_PER_INCH = BigDecimal.valueOf(25_400_000);

  private DecimalInches() {}

  /**
   * Adds the ways of a thread that counts in inches. Without its series only a Unified one takes a
   * dash.
   */
  static void of(String size, ScrewThread thread, List<String> names, Set<String> ways) {
    // A pipe thread's size is not its diameter.
    if (thread.threadsPerInch().isEmpty() || size.startsWith("g")) {
      return;
    }
    boolean unified = thread.form() == ThreadForm.UNIFIED;
    for (String decimal : decimals(thread)) {
      for (String tpi : Spellings.pitches(thread)) {
        Spellings.both(ways, decimal + "x" + tpi, names);
        Spellings.both(ways, decimal + "-" + tpi, names);
        ways.add(decimal + "x" + tpi);
        if (unified) {
          ways.add(decimal + "-" + tpi);
        }
      }
      if (!size.contains("x")) {
        Spellings.both(ways, decimal, names);
      }
    }
  }

  /** To three and four places, rounded and cut off, and in full. */
  private static Set<String> decimals(ScrewThread thread) {
    BigDecimal inches =
        BigDecimal.valueOf(thread.major().nanometres())
            .divide(NM_PER_INCH, 7, RoundingMode.HALF_UP);
    Set<String> decimals = new LinkedHashSet<>();
    for (int places : new int[] {3, 4, 6}) {
      for (RoundingMode mode : List.of(RoundingMode.HALF_UP, RoundingMode.DOWN)) {
        decimals.add(DesignationText.key(inches.setScale(places, mode).toPlainString()));
      }
    }
    // A whole number of inches is spelt as the size is.
    decimals.removeIf(decimal -> !decimal.contains("."));
    return decimals;
  }
}
