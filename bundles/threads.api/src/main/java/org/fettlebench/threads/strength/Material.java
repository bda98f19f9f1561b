package org.fettlebench.threads.strength;

import java.util.Optional;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Source;

/**
 * A material and the least strength to be counted on.
 *
 * @param id short name, such as {@code en8-normalised}
 * @param name for people, with condition and section
 * @param tensileMpa least tensile strength, above 0
 * @param yieldMpa least yield or proof stress, where printed
 * @param proofMpa proof load stress of a bolt's property class, where printed
 * @param shearMpa shear strength, where printed
 * @param source of the figures
 */
public record Material(
    String id,
    String name,
    double tensileMpa,
    Optional<Double> yieldMpa,
    Optional<Double> proofMpa,
    Optional<Double> shearMpa,
    Source source) {
  /** FED-STD-H28 lets threads shear at half the tensile strength: the 2 of its formula. */
  public static final double SHEAR_PER_TENSILE = 0.5;

  /**
   * Checks the figures.
   *
   * @throws MeasureException if a name is blank or a strength is not above 0 and finite
   */
  public Material {
    if (id.isBlank() || name.isBlank()) {
      throw new MeasureException("a material needs an id and a name");
    }
    check(name, "tensile strength", tensileMpa);
    yieldMpa.ifPresent(mpa -> check(name, "yield stress", mpa));
    proofMpa.ifPresent(mpa -> check(name, "proof stress", mpa));
    shearMpa.ifPresent(mpa -> check(name, "shear strength", mpa));
  }

  private static void check(String name, String what, double mpa) {
    if (!(mpa > 0 && mpa < 1e5)) {
      throw new MeasureException(
          name + ": " + what + " " + mpa + " MPa must be above 0 and below 100000 MPa");
    }
  }

  /** Returns the shear strength in MPa: as printed, else half the tensile strength. */
  public double threadShearMpa() {
    return shearMpa.orElse(SHEAR_PER_TENSILE * tensileMpa);
  }
}
