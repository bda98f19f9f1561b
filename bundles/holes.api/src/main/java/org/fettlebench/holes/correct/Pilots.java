package org.fettlebench.holes.correct;

import org.osgi.annotation.versioning.ProviderType;

/** Chooses the pilot drill before anything is drilled; pure. */
@ProviderType
public interface Pilots {
  /**
   * Chooses a pilot.
   *
   * @throws HoleException if a figure is out of range
   */
  PilotAnswer choose(PilotQuestion question);
}
