package org.fettlebench.tooling;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The drill systems that are enabled now: metric, fractional, number, letter and what modules add.
 */
@ProviderType
public interface Drills {
  /** Returns every catalogued size once, smallest first, with all names it has. */
  List<DrillSize> catalogue();

  /**
   * Finds a drill by name ({@code No 22}, {@code #22}, {@code F}, {@code letter F}) or by its
   * diameter with a unit or as an inch fraction ({@code 5/32}, {@code 4.1 mm}, {@code 0.161 in}). A
   * length that no system lists is still a drill, named by its size.
   *
   * <p>A bare number is not found: {@code 22} could be a number drill or millimetres, {@code 4.1}
   * has no unit. The remedy to tell: write {@code No 22} or {@code 22 mm}.
   */
  Optional<DrillSize> find(String name);

  /**
   * Returns the drill of exactly this diameter, with all names it has; named by its size if no
   * system lists it.
   *
   * @throws org.fettlebench.measure.MeasureException if the diameter is not above nothing
   */
  DrillSize ofDiameter(Length diameter);

  /**
   * Returns the {@code most} catalogued sizes nearest to a diameter, smallest first. Of two equally
   * near, the smaller is taken.
   *
   * @throws IllegalArgumentException if {@code most} is negative
   */
  List<DrillSize> near(Length diameter, int most);
}
