package org.fettlebench.kits;

import org.osgi.annotation.versioning.ProviderType;

/** The invented club and its kit, one call away for whoever wants to look round. */
@ProviderType
public interface DemoClub {
  /** Returns whether the demo kit is on the shelf. */
  boolean loaded();

  /** Puts the demo kit on the shelf and, once only, the demo stock into the club's stock. */
  void load();

  /** Returns the name under which the demo kit is kept. */
  String kitName();
}
