package org.fettlebench.fits;

import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** The ways of placing a hole that are known now. */
@ProviderType
public interface HoleMethods {
  /** Returns all methods, least careful first. */
  List<HoleMethod> methods();

  /** Finds a method by its id. */
  Optional<HoleMethod> find(String id);
}
