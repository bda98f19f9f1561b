package org.fettlebench.club;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The kit files that the club keeps, as the text that was read, to the character. Each change is
 * one transaction: when the call returns it is on disk, when it throws nothing has changed.
 */
@ProviderType
public interface KitShelf {
  /**
   * A kit file.
   *
   * @param name the kit's name, unique on the shelf
   * @param text the file's text
   * @param keptAt when it was put here, to the millisecond
   */
  record KeptKit(String name, String text, Instant keptAt) {
    /**
     * Checks the kit.
     *
     * @throws ClubException if the name is empty, longer than 200 characters or more than one line
     */
    public KeptKit {
      name = Words.needed("the name of the kit", name, 200);
      Objects.requireNonNull(text, "text");
      Objects.requireNonNull(keptAt, "keptAt");
    }
  }

  /** Returns all kits, newest first. */
  List<KeptKit> kits();

  /** Finds a kit by its whole name, capitals and all. */
  Optional<KeptKit> kit(String name);

  /**
   * Puts a kit on the shelf, in place of one of the same name, which is returned.
   *
   * @throws ClubException if the name is empty, longer than 200 characters or more than one line
   */
  Optional<KeptKit> keep(String name, String text);

  /** Takes a kit off the shelf; returns it, so that it can be put back. */
  Optional<KeptKit> remove(String name);
}
