package org.fettlebench.threads.internal.limits;

import java.util.ArrayList;
import java.util.Comparator;
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

/** Parallel pipe threads: the tolerances that ISO 228-1 prints by pitch. */
final class Iso228 implements LimitRule {
  private static final Source BASIC =
      new Source("ISO 228-1 basic size; the standard sets no other limit", Standing.PUBLISHED);

  /** A row of the table, in force above a diameter. */
  private record Band(
      Length over,
      Length major,
      Length effective,
      Length effectiveB,
      Length minor,
      Source source) {}

  private final Map<Length, List<Band>> bands = new HashMap<>();

  Iso228(List<Table> tables) {
    tables.stream()
        .flatMap(table -> table.rows().stream())
        .filter(row -> row.text("effective_mm").isPresent())
        .forEach(
            row ->
                bands
                    .computeIfAbsent(row.requiredLength("pitch_mm"), pitch -> new ArrayList<>())
                    .add(band(row)));
  }

  private static Band band(Table.Row row) {
    return new Band(
        row.length("major_over_mm").orElse(Length.ZERO),
        row.requiredLength("major_mm"),
        row.requiredLength("effective_mm"),
        row.requiredLength("effective_b_mm"),
        row.requiredLength("tolerance_mm"),
        row.source());
  }

  @Override
  public String standard() {
    return "ISO 228-1";
  }

  @Override
  public List<String> classes(ScrewThread thread) {
    return band(thread).isPresent() ? List.of("A", "B") : List.of();
  }

  @Override
  public List<LimitsOfThread> limits(
      ScrewThread thread, String threadClass, Optional<Length> engagement) {
    withoutEngagement(engagement);
    if (!threadClass.equals("A") && !threadClass.equals("B")) {
      throw unknown(thread, threadClass, "say A or B");
    }
    Band band =
        band(thread)
            .orElseThrow(() -> unknown(thread, threadClass, "its pitch is not in the table"));
    Length effective = threadClass.equals("A") ? band.effective() : band.effectiveB();
    LimitsOfThread screw =
        new LimitsOfThread(
            thread,
            ThreadSide.EXTERNAL,
            threadClass.equals("A") ? "ISO 228-1 A" : "ISO 228-1 B",
            LimitRule.between(thread.major().minus(band.major()), thread.major(), band.source()),
            LimitRule.between(
                thread.effective().minus(effective), thread.effective(), band.source()),
            LimitRule.upTo(thread.minorExternal(), BASIC),
            List.of());
    return List.of(screw, nut(thread, band));
  }

  private LimitsOfThread nut(ScrewThread thread, Band band) {
    return new LimitsOfThread(
        thread,
        ThreadSide.INTERNAL,
        standard(),
        LimitRule.from(thread.major(), BASIC),
        LimitRule.between(
            thread.effective(), thread.effective().plus(band.effective()), band.source()),
        LimitRule.between(
            thread.minorInternal(), thread.minorInternal().plus(band.minor()), band.source()),
        List.of());
  }

  /** The row of the pitch that begins highest below the diameter. */
  private Optional<Band> band(ScrewThread thread) {
    return bands.getOrDefault(thread.pitch(), List.of()).stream()
        .filter(band -> band.over().compareTo(thread.major()) < 0)
        .max(Comparator.comparing(Band::over));
  }
}
