package org.fettlebench.holes.chance;

import org.osgi.annotation.versioning.ProviderType;

/**
 * Simulation of anything that can be worked out from random figures. Trials are shared by all cores
 * and the answer does not depend on how many there are: what works out a trial keeps nothing from
 * one to the next, and is asked from several threads at once.
 */
@ProviderType
public interface Simulations {
  /** One trial: works a result out of figures drawn. */
  @FunctionalInterface
  interface Trial {
    /** Returns the result; finite. */
    double result(Draws draws);
  }

  /** One trial that comes off or does not. */
  @FunctionalInterface
  interface Attempt {
    /** Tells whether it came off. */
    boolean comesOff(Draws draws);
  }

  /**
   * Makes trials until the mean is known well enough, and keeps all results.
   *
   * @throws IllegalArgumentException if a result is not finite
   */
  Simulated run(Trial trial, Aim aim);

  /**
   * Makes attempts until their chance is known well enough. Its standard error is that of two more
   * that came off and two more that did not (Agresti and Coull's rule), so that it is not nought
   * when all came off.
   */
  Chance chance(Attempt attempt, Aim aim);
}
