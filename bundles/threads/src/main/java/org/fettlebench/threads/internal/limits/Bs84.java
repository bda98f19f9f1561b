package org.fettlebench.threads.internal.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSide;

/**
 * Whitworth threads: T = 0.002 D^(1/3) + 0.003 L^(1/2) + 0.005 p^(1/2) in inches and shares of it,
 * each to 0.0001 in as BS 84 prints its tables.
 */
final class Bs84 implements LimitRule {
  private static final Source T_RULE =
      new Source(
          "BS 84: T = 0.002 D^(1/3) + 0.003 L^(1/2) + 0.005 p^(1/2) in (Machinery's Handbook, 27th"
              + " edition, p1857, remembered)",
          Standing.FROM_MEMORY);
  private static final Source MAJOR =
      new Source(
          "BS 84: effective tolerance + 0.01 p^(1/2) in (BS 84:2007 annex as quoted at Engineering"
              + " Stack Exchange 60724; effective tolerance remembered)",
          Standing.FROM_MEMORY);
  private static final Source BASIC = new Source("BS 84 basic form", Standing.RULE);

  private static final Map<String, Double> SCREW =
      Map.of("close", 2.0 / 3, "medium", 1.0, "free", 1.5);
  private static final Map<String, Double> NUT = Map.of("medium", 1.0, "normal", 1.5);

  @Override
  public String standard() {
    return "BS 84";
  }

  @Override
  public List<String> classes(ScrewThread thread) {
    return List.of("medium", "close", "free", "normal");
  }

  @Override
  public List<LimitsOfThread> limits(
      ScrewThread thread, String threadClass, Optional<Length> engagement) {
    List<LimitsOfThread> limits = new ArrayList<>();
    if (SCREW.containsKey(threadClass)) {
      limits.add(screw(thread, threadClass, engagement));
    }
    if (NUT.containsKey(threadClass)) {
      limits.add(nut(thread, threadClass, engagement));
    }
    if (limits.isEmpty()) {
      throw unknown(
          thread,
          threadClass,
          "say close, medium or free for the screw, medium or normal for the nut");
    }
    return limits;
  }

  private LimitsOfThread screw(ScrewThread thread, String threadClass, Optional<Length> engaged) {
    double root = Math.sqrt(pitchIn(thread));
    double effective = SCREW.get(threadClass) * toleranceIn(thread, engaged);
    double minor = effective + (threadClass.equals("close") ? 0.013 : 0.02) * root;
    return new LimitsOfThread(
        thread,
        ThreadSide.EXTERNAL,
        standard() + " " + threadClass,
        LimitRule.between(
            below(thread.major(), effective + 0.01 * root), basic(thread.major()), MAJOR),
        LimitRule.between(below(thread.effective(), effective), basic(thread.effective()), T_RULE),
        LimitRule.between(
            below(thread.minorExternal(), minor), basic(thread.minorExternal()), T_RULE),
        notes(engaged));
  }

  private LimitsOfThread nut(ScrewThread thread, String threadClass, Optional<Length> engaged) {
    double effective = NUT.get(threadClass) * toleranceIn(thread, engaged);
    return new LimitsOfThread(
        thread,
        ThreadSide.INTERNAL,
        standard() + " " + threadClass,
        LimitRule.from(basic(thread.major()), BASIC),
        LimitRule.between(basic(thread.effective()), below(thread.effective(), -effective), T_RULE),
        LimitRule.between(
            basic(thread.minorInternal()),
            below(thread.minorInternal(), -minorToleranceIn(pitchIn(thread))),
            T_RULE),
        notes(engaged));
  }

  private static List<String> notes(Optional<Length> engaged) {
    return List.of(
        "for a length of engagement of " + engaged.map(Length::toString).orElse("one diameter"));
  }

  private static double toleranceIn(ScrewThread thread, Optional<Length> engaged) {
    double major = thread.major().inches();
    double length = engaged.map(Length::inches).orElse(major);
    return 0.002 * Math.cbrt(major)
        + 0.003 * Math.sqrt(length)
        + 0.005 * Math.sqrt(pitchIn(thread));
  }

  /** 0.2 p and a constant that steps at 26 and at 22 threads per inch. */
  private static double minorToleranceIn(double pitch) {
    // A little slack, since the pitch is held to 1 nm.
    double perInch = 1 / pitch + 1e-3;
    double constant = perInch >= 26 ? 0.004 : perInch >= 22 ? 0.005 : 0.007;
    return 0.2 * pitch + constant;
  }

  private static double pitchIn(ScrewThread thread) {
    return thread.pitch().inches();
  }

  private static Length basic(Length size) {
    return Rounding.inches(Rounding.halfUp(size.inches(), 4));
  }

  private static Length below(Length size, double toleranceIn) {
    return Rounding.inches(Rounding.halfUp(size.inches(), 4) - Rounding.halfUp(toleranceIn, 4));
  }
}
