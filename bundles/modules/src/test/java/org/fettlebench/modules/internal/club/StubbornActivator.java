package org.fettlebench.modules.internal.club;

import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Starts a club's module, or rather does not. */
public final class StubbornActivator implements BundleActivator {
  @Override
  public void start(BundleContext context) {
    throw new IllegalStateException("will not");
  }

  @Override
  public void stop(BundleContext context) {
    // It never started.
  }
}
