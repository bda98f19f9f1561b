package org.fettlebench.threads.internal.limits;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSide;

/** British Association threads: the formulas of BS 93, in millimetres. */
final class Bs93 implements LimitRule {
  private static final Source RULE =
      new Source("BS 93 (Machinery's Handbook, 31st edition, p2115)", Standing.RULE);
  private static final Source NUT_MAJOR =
      new Source("BS 93 basic size; the standard sets no largest", Standing.RULE);

  /** Pitch of No 10, the finest that has the allowance and the tighter crest. */
  private static final double NO_10_MM = 0.35;

  private static final double NO_16_MM = 0.19;

  @Override
  public String standard() {
    return "BS 93";
  }

  @Override
  public List<String> classes(ScrewThread thread) {
    return List.of("normal", "close");
  }

  @Override
  public List<LimitsOfThread> limits(
      ScrewThread thread, String threadClass, Optional<Length> engagement) {
    withoutEngagement(engagement);
    return switch (threadClass) {
      case "close" -> List.of(screw(thread, "close", close(thread)), nut(thread));
      case "normal" -> List.of(screw(thread, "normal", normal(thread)), nut(thread));
      default -> throw unknown(thread, threadClass, "say close or normal");
    };
  }

  /** In millimetres: how far the largest screw is below basic size, and three tolerances. */
  private record Below(double allowance, double major, double effective, double minor) {}

  private static Below close(ScrewThread thread) {
    double p = thread.pitch().millimetres();
    return new Below(0, 0.15 * p, 0.08 * p + 0.02, 0.16 * p + 0.04);
  }

  private static Below normal(ScrewThread thread) {
    double p = thread.pitch().millimetres();
    boolean toNo10 = p >= NO_10_MM;
    return new Below(
        toNo10 ? 0.025 : 0, (toNo10 ? 0.20 : 0.25) * p, 0.10 * p + 0.025, 0.20 * p + 0.05);
  }

  private LimitsOfThread screw(ScrewThread thread, String threadClass, Below below) {
    return new LimitsOfThread(
        thread,
        ThreadSide.EXTERNAL,
        standard() + " " + threadClass,
        LimitRule.between(
            less(thread.major(), below.allowance() + below.major()),
            less(thread.major(), below.allowance()),
            RULE),
        LimitRule.between(
            less(thread.effective(), below.allowance() + below.effective()),
            less(thread.effective(), below.allowance()),
            RULE),
        LimitRule.between(
            less(thread.minorExternal(), below.allowance() + below.minor()),
            less(thread.minorExternal(), below.allowance()),
            RULE),
        notes(thread));
  }

  private LimitsOfThread nut(ScrewThread thread) {
    double p = thread.pitch().millimetres();
    return new LimitsOfThread(
        thread,
        ThreadSide.INTERNAL,
        standard(),
        LimitRule.from(thread.major(), NUT_MAJOR),
        LimitRule.between(thread.effective(), less(thread.effective(), -(0.12 * p + 0.03)), RULE),
        LimitRule.between(thread.minorInternal(), less(thread.minorInternal(), -0.375 * p), RULE),
        notes(thread));
  }

  private static List<String> notes(ScrewThread thread) {
    return thread.pitch().millimetres() >= NO_16_MM
        ? List.of()
        : List.of("BS 93 ends at No 16; its rule is carried on");
  }

  private static Length less(Length size, double millimetres) {
    return Rounding.millimetres(size.millimetres() - millimetres);
  }
}
