package org.fettlebench.threads.wires;

import java.util.List;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;
import org.osgi.annotation.versioning.ProviderType;

/** Wires for measuring the effective diameter of screws. */
@ProviderType
public interface MeasuringWires {
  /**
   * Returns the best, least and most wire for a pitch.
   *
   * @throws MeasureException if the pitch is not above 0
   */
  WireSizes sizes(ThreadForm form, Length pitch);

  /**
   * Returns those of the wires (or drill shanks) at hand that fit, nearest to the best first; of
   * two as near the larger first.
   *
   * @throws MeasureException if the pitch is not above 0
   */
  List<Length> choose(ThreadForm form, Length pitch, List<Length> held);

  /**
   * Returns the measurement over three wires of a screw with an effective diameter.
   *
   * @throws MeasureException if the wire does not fit the thread, or the effective diameter is not
   *     between half and twice the thread's own
   */
  OverWires over(ScrewThread thread, Length wire, Length effective);

  /**
   * Returns the effective diameter of a screw from the measurement over three wires; the inverse of
   * {@link #over}.
   *
   * @throws MeasureException if the wire does not fit the thread, or the outcome is not between
   *     half and twice the thread's own effective diameter
   */
  OverWires effective(ScrewThread thread, Length wire, Length overWires);

  /**
   * Returns by how much the anvils' force makes the measurement over three wires read small: the
   * give where wires and flanks touch. That of the wires against flat anvils is not in it, since
   * wires are measured so too.
   *
   * @param forceN between the anvils, above 0 to 100 newtons
   * @param modulusGpa Young's modulus of screw and wires, 10 to 700; Poisson's ratio 0.3 is assumed
   * @throws MeasureException if the wire does not fit the thread, or a figure is outside its range
   */
  WireGive give(ScrewThread thread, Length wire, double forceN, double modulusGpa);
}
