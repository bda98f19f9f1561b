package org.fettlebench.modules;

import java.nio.file.Path;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/** The modules that are installed now. */
@ProviderType
public interface Modules {
  /**
   * Returns all modules: those from the modules folder first, then the suite's own, then libraries,
   * each by title.
   */
  List<Module> installed();

  /** Returns the folder into which a club drops modules. */
  Path folder();

  /**
   * Leaves a module out (stops it, also at every later start) or lets it in again. If it does not
   * start or stop as it should, that is kept among its faults.
   *
   * @throws IllegalArgumentException if no module of that name came from the modules folder; the
   *     suite's own parts cannot be left out
   * @throws java.io.UncheckedIOException if the choice cannot be remembered; nothing is changed
   */
  void enable(String symbolicName, boolean enabled);

  /** Returns a number that rises whenever anything about the modules changes. */
  long revision();
}
