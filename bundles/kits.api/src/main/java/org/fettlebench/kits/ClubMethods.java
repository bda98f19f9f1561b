package org.fettlebench.kits;

import java.util.List;
import java.util.Optional;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.holes.chance.MethodEstimate;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The ways of placing a hole as the club's own measured errors have made them. Pure: errors in,
 * methods out.
 */
@ProviderType
public interface ClubMethods {
  /**
   * Whose holes are asked for.
   *
   * @param member only this member's; empty for everybody's
   * @param machine only those drilled on this machine; empty for all
   * @param priorHoles how many holes what was known before counts for
   */
  record Asked(Optional<String> member, Optional<String> machine, double priorHoles) {}

  /**
   * Returns the estimate of each known method, least careful first as the tables have them.
   *
   * <p>For everybody, what was known before is the table's figure. For one member or machine it is
   * what the others measured, where they did, so that a newcomer starts from the club's estimate;
   * no hole counts twice.
   *
   * @param errors the club's book; what was struck out, and what is of other methods, does not
   *     count
   */
  List<MethodEstimate> estimates(List<MeasuredError> errors, Asked asked);

  /** Returns the estimate of one method for everybody, by its id; empty when it is not known. */
  Optional<MethodEstimate> find(String id, List<MeasuredError> errors);
}
