package org.fettlebench.tooling.internal.risk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.tooling.internal.risk.CoefficientTable.Coefficient;
import org.fettlebench.tooling.internal.risk.ResistanceTable.Resistance;
import org.fettlebench.tooling.risk.Assumed;
import org.fettlebench.tooling.risk.TapJob;
import org.fettlebench.tooling.work.WorkMaterial;

/**
 * All figures of one job, and what comes out of them.
 *
 * @param standIn the material whose resistance is taken, where it is another one
 */
record TapFigures(
    TapJob job,
    Resistance resistance,
    Optional<WorkMaterial> standIn,
    Coefficient tap,
    int flutes,
    Span core,
    Span strength,
    Span freeDepth,
    Span extra) {
  /** Torque to cut, in newton metres, at an end or the middle of the assumptions. */
  private double cutting(double resistanceMpa, double extraPart) {
    return TapTorque.cutting(job, resistanceMpa, tap.of(TapTorque.fine(job)))
        * TapTorque.share(job, tap.lead())
        * (1 + extraPart * diametersBeyond());
  }

  private double diametersBeyond() {
    double diameters = job.depth().millimetres() / job.thread().major().millimetres();
    return Math.max(0, diameters - freeDepth.middle());
  }

  private double breaking(double corePart, double strengthMpa) {
    return TapTorque.breaking(corePart * job.thread().major().millimetres(), strengthMpa);
  }

  double cuttingNm() {
    return cutting(resistance.mpa().middle(), extra.middle());
  }

  double breakingNm() {
    return breaking(core.middle(), strength.middle());
  }

  Length coreDiameter() {
    return Length.ofMillimetres(core.middle() * job.thread().major().millimetres());
  }

  double ratio() {
    return cuttingNm() / breakingNm();
  }

  double ratioLeast() {
    return cutting(resistance.mpa().least(), extra.least())
        / breaking(core.most(), strength.most());
  }

  double ratioMost() {
    return cutting(resistance.mpa().most(), extra.most())
        / breaking(core.least(), strength.least());
  }

  List<Assumed> assumed() {
    List<Assumed> all = new ArrayList<>();
    all.add(
        new Assumed(
            "cutting resistance of " + material(),
            mpa(resistance.mpa()),
            resistance.mpa().source()));
    boolean fine = TapTorque.fine(job);
    all.add(
        new Assumed(
            String.format(
                Locale.ROOT,
                "coefficient of a %s, %s thread",
                job.tap().title(),
                fine ? "fine" : "coarse"),
            String.format(
                Locale.ROOT,
                "%.2f%s",
                tap.of(fine),
                fine && tap.fine().isEmpty() ? ", that of a coarse one" : ""),
            tap.source()));
    all.add(
        new Assumed(
            "a pitch below 0.88 of (D/6)^(1/1.2) counts as fine",
            fine ? "fine" : "coarse",
            new Source("our division between coarse and fine", Standing.COMMON_PRACTICE)));
    all.add(
        new Assumed(
            String.format(Locale.ROOT, "core of a tap with %d flutes", flutes),
            String.format(Locale.ROOT, "%s to %s of the major diameter", core.least(), core.most()),
            core.source()));
    all.add(
        new Assumed(
            "stress at which the core breaks in torsion", mpa(strength), strength.source()));
    if (diametersBeyond() > 0) {
      all.add(
          new Assumed(
              String.format(
                  Locale.ROOT,
                  "extra torque for each diameter of depth beyond %s",
                  freeDepth.middle()),
              String.format(
                  Locale.ROOT, "%.0f to %.0f per cent", 100 * extra.least(), 100 * extra.most()),
              extra.source()));
    }
    double share = TapTorque.share(job, tap.lead());
    if (share < 1) {
      all.add(
          new Assumed(
              String.format(
                  Locale.ROOT,
                  "metal thinner than the tap's lead of %s pitches: part that cuts at once",
                  tap.lead()),
              String.format(Locale.ROOT, "%.2f", share),
              new Source("1 - (1 - thickness / lead)²: geometry of the triangle", Standing.RULE)));
    }
    return List.copyOf(all);
  }

  private String material() {
    return job.material().name()
        + standIn.map(other -> ", taken as " + other.name()).orElse("")
        + (resistance.note().isEmpty() ? "" : " (" + resistance.note() + ")");
  }

  private static String mpa(Span span) {
    return span.least() == span.most()
        ? String.format(Locale.ROOT, "%.0f MPa", span.least())
        : String.format(Locale.ROOT, "%.0f to %.0f MPa", span.least(), span.most());
  }
}
