package org.fettlebench.tooling;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.osgi.annotation.versioning.ProviderType;

/** The drill systems that are enabled now: metric, fractional, number and letter. */
@ProviderType
public interface Drills {
  /** Returns every catalogued size once, smallest first. */
  List<DrillSize> catalogue();

  /**
   * Finds a drill by name ({@code No 22}, {@code #22}, {@code F}, {@code 5/32}, {@code 4.1 mm}). A
   * length that no system lists is still a drill, named by its size.
   */
  Optional<DrillSize> find(String name);

  /** Returns the drill of exactly this diameter, with all names it has. */
  DrillSize ofDiameter(Length diameter);

  /** Returns the {@code most} catalogued sizes nearest to a diameter, smallest first. */
  List<DrillSize> near(Length diameter, int most);
}
