package org.fettlebench.threads.internal.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSide;

/** ISO metric threads: position and grade of ISO 965-1, sizes to 0.001 mm. */
final class Iso965 implements LimitRule {
  private static final Pattern SCREW = Pattern.compile("([3-9])([efgh])(?:([3-9])([efgh]))?");
  private static final Pattern NUT = Pattern.compile("([4-8])([GH])(?:([4-8])([GH]))?");
  private static final String REMEDY =
      "say a grade and a position, such as 6g or 4g6g for the screw (grades 3 to 9, positions e f g"
          + " h), 6H or 5H6H for the nut (grades 4 to 8, positions G H)";
  private static final Source BASIC = new Source("ISO 724 basic size", Standing.RULE);
  private static final Source LARGEST =
      new Source("ASME B1.13M: largest effective diameter + 11/12 H", Standing.RULE);

  private static final Source BASIC_AND_LARGEST =
      new Source(BASIC.citation() + "; " + LARGEST.citation(), Standing.RULE);

  /** A class that is written rightly, taken apart. */
  private record Asked(boolean screw, String threadClass, String name, int effective, int crest) {
    char position() {
      return threadClass.charAt(1);
    }
  }

  private final MetricTolerances tolerances;

  /** There are some hundreds of classes at most. */
  private final Map<String, Asked> known = new ConcurrentHashMap<>();

  Iso965(List<Table> tables) {
    this.tolerances = new MetricTolerances(tables);
  }

  @Override
  public String standard() {
    return "ISO 965-1";
  }

  @Override
  public List<String> classes(ScrewThread thread) {
    return List.of("6H/6g", "5H/4h", "6G/6e", "7H/8g");
  }

  @Override
  public List<LimitsOfThread> limits(
      ScrewThread thread, String threadClass, Optional<Length> engagement) {
    withoutEngagement(engagement);
    Asked asked = known.get(threadClass);
    if (asked == null) {
      asked = asked(thread, threadClass);
      known.put(threadClass, asked);
    }
    return List.of(asked.screw() ? screw(thread, asked) : nut(thread, asked));
  }

  private Asked asked(ScrewThread thread, String threadClass) {
    Matcher screw = SCREW.matcher(threadClass);
    Matcher nut = NUT.matcher(threadClass);
    if (!screw.matches() && !nut.matches()) {
      throw unknown(thread, threadClass, REMEDY);
    }
    Matcher parts = screw.matches() ? screw : nut;
    if (parts.group(4) != null && !parts.group(4).equals(parts.group(2))) {
      throw unknown(thread, threadClass, "both diameters have the same position");
    }
    int effective = Integer.parseInt(parts.group(1));
    int crest = parts.group(3) == null ? effective : Integer.parseInt(parts.group(3));
    String name = standard() + " " + threadClass;
    return new Asked(screw.matches(), threadClass, name, effective, crest);
  }

  private LimitsOfThread screw(ScrewThread thread, Asked asked) {
    double pitch = thread.pitch().millimetres();
    Tolerance below = tolerances.deviation(thread, asked.position());
    Tolerance major =
        tolerances
            .major(thread, asked.crest())
            .orElseThrow(() -> noCrest(thread, asked.threadClass()));
    Tolerance middle = tolerances.effective(thread, asked.effective(), ThreadSide.EXTERNAL);
    double majorMost = thread.major().millimetres() - below.mm();
    double effectiveMost = basic(thread.effective()) - below.mm();
    double effectiveLeast = effectiveMost - middle.mm();
    // The rounded root lies 0.616025 p below the least effective diameter (ASME B1.13M).
    double minorLeast = Rounding.halfUp(effectiveLeast - 0.616025 * pitch, 3);
    return new LimitsOfThread(
        thread,
        ThreadSide.EXTERNAL,
        asked.name(),
        LimitRule.between(mm(majorMost - major.mm()), mm(majorMost), below.weaker(major)),
        LimitRule.between(mm(effectiveLeast), mm(effectiveMost), below.weaker(middle)),
        LimitRule.between(
            mm(minorLeast), mm(basic(thread.minorInternal()) - below.mm()), below.weaker(middle)),
        middle.notes());
  }

  private LimitsOfThread nut(ScrewThread thread, Asked asked) {
    double pitch = thread.pitch().millimetres();
    Tolerance above = tolerances.deviation(thread, asked.position());
    Tolerance minor = tolerances.minor(thread, asked.crest());
    Tolerance middle = tolerances.effective(thread, asked.effective(), ThreadSide.INTERNAL);
    double minorLeast = basic(thread.minorInternal()) + above.mm();
    double effectiveLeast = basic(thread.effective()) + above.mm();
    double majorMost =
        thread.effective().millimetres() + above.mm() + middle.mm() + 0.7938566 * pitch;
    List<String> notes = new ArrayList<>(middle.notes());
    notes.addAll(minor.notes());
    return new LimitsOfThread(
        thread,
        ThreadSide.INTERNAL,
        asked.name(),
        LimitRule.between(
            mm(thread.major().millimetres() + above.mm()),
            // Prints round this half either way: one place more than theirs lies between.
            mm(Rounding.halfUp(majorMost, 4)),
            above.mm() == 0 ? BASIC_AND_LARGEST : LARGEST),
        LimitRule.between(
            mm(effectiveLeast), mm(effectiveLeast + middle.mm()), above.weaker(middle)),
        LimitRule.between(mm(minorLeast), mm(minorLeast + minor.mm()), above.weaker(minor)),
        notes);
  }

  private org.fettlebench.measure.MeasureException noCrest(ScrewThread thread, String threadClass) {
    return unknown(
        thread,
        threadClass,
        "the crest has grades 4 and 6, and 8 from a pitch of 0.8 mm; write 8g6g for other grades of"
            + " the effective diameter");
  }

  /** The basic sizes are rounded before the tolerances are added, as ISO 965-2 prints them. */
  private static double basic(Length size) {
    return Rounding.halfUp(size.millimetres(), 3);
  }

  private static Length mm(double millimetres) {
    return Rounding.millimetres(millimetres);
  }
}
