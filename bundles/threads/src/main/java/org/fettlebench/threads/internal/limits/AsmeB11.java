package org.fettlebench.threads.internal.limits;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSide;

/**
 * Unified threads: the formulas of ASME B1.1, in inches. Tolerances and allowances are rounded to
 * 0.0001 in before they are taken from sizes that are rounded so.
 */
final class AsmeB11 implements LimitRule {
  private static final Source FORMULA =
      new Source(
          "ASME B1.1 formula, remembered; agrees with the printed limits of efunda.com and"
              + " Machinery's Handbook, 31st edition",
          Standing.FROM_MEMORY);
  private static final Source BASIC = new Source("ASME B1.1 basic form", Standing.RULE);

  /** Share of the tolerance of class 2A that a class has on the effective diameter. */
  private static final Map<String, Double> SHARE =
      Map.of("1A", 1.5, "2A", 1.0, "3A", 0.75, "1B", 1.95, "2B", 1.3, "3B", 0.975);

  /** A printed tolerance of the effective diameter that departs from the formula. */
  private record Departure(Length major, BigDecimal tpi, double toleranceIn, Source source) {}

  private final Map<String, List<Departure>> departures = new HashMap<>();

  AsmeB11(List<Table> printed) {
    printed.stream()
        .flatMap(table -> table.rows().stream())
        .forEach(
            row ->
                departures
                    .computeIfAbsent(row.requiredText("class"), name -> new ArrayList<>())
                    .add(
                        new Departure(
                            row.requiredLength("major_in"),
                            row.requiredNumber("tpi"),
                            row.requiredLength("effective_tolerance_in").inches(),
                            row.source())));
  }

  @Override
  public String standard() {
    return "ASME B1.1";
  }

  @Override
  public List<String> classes(ScrewThread thread) {
    return List.of("2B/2A", "3B/3A", "1B/1A");
  }

  @Override
  public List<LimitsOfThread> limits(
      ScrewThread thread, String threadClass, Optional<Length> engagement) {
    if (!SHARE.containsKey(threadClass)) {
      throw unknown(
          thread, threadClass, "say 1A, 2A or 3A for the screw, 1B, 2B or 3B for the nut");
    }
    UnifiedSizes sizes = UnifiedSizes.of(thread, engagement);
    return List.of(threadClass.endsWith("A") ? screw(sizes, threadClass) : nut(sizes, threadClass));
  }

  private LimitsOfThread screw(UnifiedSizes sizes, String threadClass) {
    List<String> notes = notes(sizes);
    // Allowance is 0.3 of the tolerance of 2A; 3A has none. Major: 0.06 p^(2/3), 1A 0.09 p^(2/3).
    double allowance = threadClass.equals("3A") ? 0 : Rounding.halfUp(0.3 * sizes.tolerance2A(), 4);
    double majorTolerance =
        Rounding.halfUp((threadClass.equals("1A") ? 0.09 : 0.06) * Math.cbrt(sq(sizes.pitch())), 4);
    double majorMost = Rounding.halfUp(sizes.major() - allowance, 4);
    Optional<Departure> departure = departure(sizes, threadClass, notes);
    double effectiveMost = sizes.effective() - allowance;
    double tolerance =
        departure
            .map(Departure::toleranceIn)
            .orElseGet(() -> Rounding.halfUp(SHARE.get(threadClass) * sizes.tolerance2A(), 4));
    double rootLeast = effectiveMost - tolerance - 0.64951905 * sizes.pitch();
    double rootMost = sizes.major() - allowance - 1.19078493 * sizes.pitch();
    return new LimitsOfThread(
        sizes.thread(),
        ThreadSide.EXTERNAL,
        standard() + " " + threadClass,
        LimitRule.between(in(majorMost - majorTolerance), in(majorMost), FORMULA),
        LimitRule.between(
            in(effectiveMost - tolerance),
            in(effectiveMost),
            departure.map(Departure::source).orElse(FORMULA)),
        LimitRule.between(
            in(Rounding.halfUp(rootLeast, 4)), in(Rounding.halfUp(rootMost, 4)), FORMULA),
        notes);
  }

  private LimitsOfThread nut(UnifiedSizes sizes, String threadClass) {
    List<String> notes = notes(sizes);
    Optional<Departure> departure = departure(sizes, threadClass, notes);
    double tolerance =
        departure
            .map(Departure::toleranceIn)
            .orElseGet(() -> Rounding.halfUp(SHARE.get(threadClass) * sizes.tolerance2A(), 4));
    double basic = Rounding.halfUp(sizes.major() - 1.08253175 * sizes.pitch(), 4);
    double most = basic + Rounding.halfUp(sizes.minorTolerance(threadClass.equals("3B")), 4);
    // From #6 up the standard prints minor diameters to 0.001 in, but the most of 3B to 0.0001 in.
    boolean fine = sizes.major() < 0.138;
    double shownMost =
        fine || threadClass.equals("3B") ? Rounding.halfUp(most, 4) : Rounding.halfEven(most, 3);
    double shownLeast = fine ? basic : Rounding.halfUp(basic, 3);
    return new LimitsOfThread(
        sizes.thread(),
        ThreadSide.INTERNAL,
        standard() + " " + threadClass,
        LimitRule.from(in(Rounding.halfUp(sizes.major(), 4)), BASIC),
        LimitRule.between(
            in(sizes.effective()),
            in(sizes.effective() + tolerance),
            departure.map(Departure::source).orElse(FORMULA)),
        LimitRule.between(in(shownLeast), in(shownMost), FORMULA),
        notes);
  }

  private static List<String> notes(UnifiedSizes sizes) {
    List<String> notes = new ArrayList<>();
    notes.add("for a length of engagement of " + sizes.engagementWords());
    return notes;
  }

  private Optional<Departure> departure(
      UnifiedSizes sizes, String threadClass, List<String> notes) {
    if (!sizes.usualEngagement()) {
      return Optional.empty();
    }
    for (Departure one : departures.getOrDefault(threadClass, List.of())) {
      if (one.major().equals(sizes.thread().major()) && sizes.hasThreadsPerInch(one.tpi())) {
        notes.add("the printed effective limit departs from the formula and is taken");
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }

  private static double sq(double value) {
    return value * value;
  }

  private static Length in(double inches) {
    return Rounding.inches(inches);
  }
}
