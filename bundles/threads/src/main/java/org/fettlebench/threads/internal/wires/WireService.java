package org.fettlebench.threads.internal.wires;

import java.util.Comparator;
import java.util.List;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;
import org.fettlebench.threads.wires.MeasuringWires;
import org.fettlebench.threads.wires.OverWires;
import org.fettlebench.threads.wires.WireGive;
import org.fettlebench.threads.wires.WireSizes;
import org.osgi.service.component.annotations.Component;

/** Measures over wires in millimetres. */
@Component
public final class WireService implements MeasuringWires {
  private static final List<String> NOTES =
      List.of(
          "three wires of one size; single-start thread of its form's full angle",
          "helix correction (w/2) tan^2 s cos a cot a, from memory; none for the anvils' pressure");

  private static final Source PRESSURE =
      new Source(
          "Hertz's contact of crossed bars (K. L. Johnson, Contact Mechanics, 1985, chapter 4)",
          Standing.FROM_MEMORY);

  private static final List<String> PRESSURE_NOTES =
      List.of(
          "screw and wires of one material, Poisson's ratio 0.3; clean flanks",
          "the give of the wires against the anvils is not in it: wires are measured between flats"
              + " too");

  private static final double POISSON = 0.3;

  @Override
  public WireSizes sizes(ThreadForm form, Length pitch) {
    if (!pitch.isPositive()) {
      throw new MeasureException("pitch " + pitch + " must be above 0 mm");
    }
    WireGeometry wires = WireGeometry.of(form);
    double p = pitch.millimetres();
    return new WireSizes(mm(wires.best(p)), mm(wires.least(p)), mm(wires.most(p)));
  }

  @Override
  public List<Length> choose(ThreadForm form, Length pitch, List<Length> held) {
    WireSizes sizes = sizes(form, pitch);
    return held.stream()
        .filter(sizes::allow)
        .distinct()
        .sorted(
            Comparator.comparing((Length wire) -> wire.minus(sizes.best()).abs())
                .thenComparing(Comparator.reverseOrder()))
        .toList();
  }

  @Override
  public OverWires over(ScrewThread thread, Length wire, Length effective) {
    fits(thread, wire);
    near(thread, effective);
    WireGeometry wires = WireGeometry.of(thread.form());
    double p = thread.pitch().millimetres();
    double helix = wires.helixCorrection(p, wire.millimetres(), effective.millimetres());
    double over = wires.over(p, wire.millimetres(), effective.millimetres()) + helix;
    return new OverWires(wire, mm(over), effective, mm(helix), NOTES);
  }

  @Override
  public OverWires effective(ScrewThread thread, Length wire, Length overWires) {
    fits(thread, wire);
    WireGeometry wires = WireGeometry.of(thread.form());
    double p = thread.pitch().millimetres();
    double w = wire.millimetres();
    double plain = wires.effective(p, w, overWires.millimetres());
    near(thread, mm(plain));
    // The correction hangs on the outcome so little that a few rounds settle it to 1 nm.
    double effective = plain;
    for (int round = 0; round < 8; round++) {
      effective = plain - wires.helixCorrection(p, w, effective);
    }
    double helix = wires.helixCorrection(p, w, effective);
    return new OverWires(wire, overWires, mm(effective), mm(helix), NOTES);
  }

  @Override
  public WireGive give(ScrewThread thread, Length wire, double forceN, double modulusGpa) {
    fits(thread, wire);
    if (!(forceN > 0 && forceN <= 100)) {
      throw new MeasureException("measuring force " + forceN + " N is outside above 0 to 100 N");
    }
    if (!(modulusGpa >= 10 && modulusGpa <= 700)) {
      throw new MeasureException("modulus " + modulusGpa + " GPa is outside 10 to 700 GPa");
    }
    double sine = Math.sin(WireGeometry.of(thread.form()).halfAngle());
    double flankRadius = thread.effective().millimetres() / (2 * sine);
    double modulus = modulusGpa * 1000 / (2 * (1 - POISSON * POISSON));
    double give = 0;
    for (double force : new double[] {forceN, forceN / 2}) {
      give +=
          HertzContact.approachMm(force / (2 * sine), wire.millimetres() / 2, flankRadius, modulus)
              / sine;
    }
    return new WireGive(mm(give), PRESSURE, PRESSURE_NOTES);
  }

  private void fits(ScrewThread thread, Length wire) {
    WireSizes sizes = sizes(thread.form(), thread.pitch());
    if (!sizes.allow(wire)) {
      throw new MeasureException(
          "wire of %s does not fit %s: take one of %s to %s, best %s"
              .formatted(wire, thread.designation(), sizes.least(), sizes.most(), sizes.best()));
    }
  }

  private static void near(ScrewThread thread, Length effective) {
    double share = effective.millimetres() / thread.effective().millimetres();
    if (!(share >= 0.5 && share <= 2)) {
      throw new MeasureException(
          "effective diameter %s is not between half and twice the %s of %s: check the measurement"
              .formatted(effective, thread.effective(), thread.designation()));
    }
  }

  private static Length mm(double millimetres) {
    return Length.ofMillimetres(millimetres);
  }
}
