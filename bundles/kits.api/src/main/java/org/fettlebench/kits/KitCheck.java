package org.fettlebench.kits;

import org.osgi.annotation.versioning.ProviderType;

/** Checks a kit against what is at hand. The same kit and holdings give the same report. */
@ProviderType
public interface KitCheck {
  /**
   * Checks every joint. Fasteners are reserved in file order, first from the kit's bag, then from
   * stock, so that nothing is counted twice; worn things never count. Never throws for what a joint
   * is like: that becomes a finding. A rule that throws is reported and left out.
   */
  KitReport check(Kit kit, Holdings holdings);
}
