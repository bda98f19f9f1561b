package org.fettlebench.modules;

import java.nio.file.Path;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/** The modules that are installed now. */
@ProviderType
public interface Modules {
  /** Returns all modules, those from the modules folder first, then by title. */
  List<Module> installed();

  /** Returns the folder into which a club drops modules. */
  Path folder();

  /** Leaves a module out (stops it, also at the next start) or lets it in again. */
  void enable(String symbolicName, boolean enabled);

  /** Returns a number that rises whenever anything about the modules changes. */
  long revision();
}
