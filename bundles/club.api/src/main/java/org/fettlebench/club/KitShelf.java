package org.fettlebench.club;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** The kit files that the club keeps, as the text that was read. */
@ProviderType
public interface KitShelf {
  /**
   * A kit file.
   *
   * @param name the kit's name, unique on the shelf
   * @param text the file's text
   * @param keptAt when it was put here
   */
  record KeptKit(String name, String text, Instant keptAt) {}

  /** Returns all kits, newest first. */
  List<KeptKit> kits();

  /** Finds a kit. */
  Optional<KeptKit> kit(String name);

  /** Puts a kit on the shelf, in place of one of the same name, which is returned. */
  Optional<KeptKit> keep(String name, String text);

  /** Takes a kit off the shelf; returns it, so that it can be put back. */
  Optional<KeptKit> remove(String name);
}
