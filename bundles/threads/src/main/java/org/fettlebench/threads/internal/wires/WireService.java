package org.fettlebench.threads.internal.wires;

import java.util.Comparator;
import java.util.List;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;
import org.fettlebench.threads.wires.MeasuringWires;
import org.fettlebench.threads.wires.OverWires;
import org.fettlebench.threads.wires.WireSizes;
import org.osgi.service.component.annotations.Component;

/** Measures over wires in millimetres. */
@Component
public final class WireService implements MeasuringWires {
  private static final List<String> NOTES =
      List.of(
          "three wires of one size; single-start thread of its form's full angle",
          "helix correction (w/2) tan^2 s cos a cot a, from memory; none for the anvils' pressure");

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
