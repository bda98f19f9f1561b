package org.fettlebench.modules;

import org.osgi.annotation.versioning.ProviderType;

/**
 * Where every registry reports what a contribution did wrong, so that one bad module never spoils
 * the rest: catch what it throws, report it here, go on without it.
 */
@ProviderType
public interface Faults {
  /**
   * Keeps a fault against the module that owns a contribution.
   *
   * @param contribution the contributed object (its class tells the module) or a {@code
   *     org.osgi.framework.Bundle}
   * @param doing what was being done, as a person would say it: "checking joint Gland"
   * @param cause what was thrown
   */
  void report(Object contribution, String doing, Throwable cause);
}
