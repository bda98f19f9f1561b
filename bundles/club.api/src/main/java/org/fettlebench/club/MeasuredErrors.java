package org.fettlebench.club;

import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The club's book of measured errors of holes. Each change is one transaction: when the call
 * returns it is on disk, when it throws nothing has changed.
 */
@ProviderType
public interface MeasuredErrors {
  /** Returns all entries in the order in which they were written, those struck out too. */
  List<MeasuredError> all();

  /** Returns the entries that count, in the order in which they were written. */
  default List<MeasuredError> counting() {
    return all().stream().filter(MeasuredError::counts).toList();
  }

  /** Writes errors down, all or none, and returns them as they stand in the book. */
  List<MeasuredError> enter(List<HoleError> errors);

  /**
   * Strikes an entry out, so that it no longer counts; it stays in the book.
   *
   * @param id its key
   * @param member who strikes it out; may be empty
   * @param reason why; not empty
   * @return the entry as it stands now
   * @throws ClubException if there is no such entry, it was struck out already, or no reason is
   *     given
   */
  MeasuredError strike(long id, String member, String reason);
}
