package org.fettlebench.modules;

import org.osgi.annotation.versioning.ConsumerType;

/** Registered as a service to be told, on any thread, that modules, tables or services changed. */
@ConsumerType
@FunctionalInterface
public interface ModulesListener {
  /** Called shortly after a change; several changes may be told at once. */
  void modulesChanged();
}
