package org.fettlebench.threads.internal.limits;

import java.util.Comparator;
import java.util.List;
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

  private final List<Table> tables;

  Iso228(List<Table> tables) {
    this.tables = tables;
  }

  @Override
  public String standard() {
    return "ISO 228-1";
  }

  @Override
  public List<String> classes(ScrewThread thread) {
    return row(thread).isPresent() ? List.of("A", "B") : List.of();
  }

  @Override
  public List<LimitsOfThread> limits(
      ScrewThread thread, String threadClass, Optional<Length> engagement) {
    withoutEngagement(engagement);
    if (!threadClass.equals("A") && !threadClass.equals("B")) {
      throw unknown(thread, threadClass, "say A or B");
    }
    Table.Row row =
        row(thread)
            .orElseThrow(() -> unknown(thread, threadClass, "its pitch is not in the table"));
    String column = threadClass.equals("A") ? "effective_mm" : "effective_b_mm";
    LimitsOfThread screw =
        new LimitsOfThread(
            thread,
            ThreadSide.EXTERNAL,
            standard() + " " + threadClass,
            LimitRule.between(
                thread.major().minus(row.requiredLength("major_mm")), thread.major(), row.source()),
            LimitRule.between(
                thread.effective().minus(row.requiredLength(column)),
                thread.effective(),
                row.source()),
            LimitRule.upTo(thread.minorExternal(), BASIC),
            List.of());
    return List.of(screw, nut(thread, row));
  }

  private LimitsOfThread nut(ScrewThread thread, Table.Row row) {
    return new LimitsOfThread(
        thread,
        ThreadSide.INTERNAL,
        standard(),
        LimitRule.from(thread.major(), BASIC),
        LimitRule.between(
            thread.effective(),
            thread.effective().plus(row.requiredLength("effective_mm")),
            row.source()),
        LimitRule.between(
            thread.minorInternal(),
            thread.minorInternal().plus(row.requiredLength("tolerance_mm")),
            row.source()),
        List.of());
  }

  /** The row of the pitch that begins highest below the diameter. */
  private Optional<Table.Row> row(ScrewThread thread) {
    return tables.stream()
        .filter(table -> table.id().equals(standard()))
        .flatMap(table -> table.rows().stream())
        .filter(row -> row.requiredLength("pitch_mm").equals(thread.pitch()))
        .filter(row -> row.text("effective_mm").isPresent())
        .filter(row -> over(row).compareTo(thread.major()) < 0)
        .max(Comparator.comparing(Iso228::over));
  }

  private static Length over(Table.Row row) {
    return row.length("major_over_mm").orElse(Length.ZERO);
  }
}
