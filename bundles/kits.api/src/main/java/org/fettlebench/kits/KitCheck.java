package org.fettlebench.kits;

import org.osgi.annotation.versioning.ProviderType;

/** Checks a kit against what is at hand. The same kit and holdings give the same report. */
@ProviderType
public interface KitCheck {
  /** Checks every joint. Never throws for what a joint is like: that becomes a finding. */
  KitReport check(Kit kit, Holdings holdings);
}
