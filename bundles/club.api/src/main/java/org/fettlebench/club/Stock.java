package org.fettlebench.club;

import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The club's stock as a ledger of movements. Each change is one transaction: when the call returns
 * it is on disk, when it throws nothing has changed.
 */
@ProviderType
public interface Stock {
  /** Returns all lines, by kind, thread, name and place. */
  List<StockLine> lines();

  /** Finds a line. */
  Optional<StockLine> line(long id);

  /** Returns the movements of a line, newest first. */
  List<Movement> movements(long lineId);

  /** Returns all movements after a key, oldest first, at most {@code most}. */
  List<Movement> movementsAfter(long movementId, int most);

  /** Receives things, all or none. */
  List<Movement> receive(List<Receipt> receipts, String member, String note);

  /**
   * Takes things out.
   *
   * @throws ClubException if fewer are present, or the line does not exist
   */
  Movement take(long lineId, int quantity, String member, String note);

  /** Brings back things that were taken and not used. */
  Movement putBack(long lineId, int quantity, String member, String note);

  /** Throws things away. */
  Movement scrap(long lineId, int quantity, String member, String note);

  /** Sets the quantity to what was counted; the difference becomes the movement. */
  Movement count(long lineId, int counted, String member, String note);

  /**
   * Undoes a movement by a counter-entry.
   *
   * @throws ClubException if it was undone already, or too few are left to undo it
   */
  Movement undo(long movementId, String member);

  /** Lends things to a member. */
  void lend(long lineId, int quantity, String member, Optional<java.time.LocalDate> due);

  /** Takes back things that a member had on loan. */
  void giveBack(long lineId, int quantity, String member);

  /** Returns the names of members seen so far. */
  List<String> members();

  /** Returns the places used so far, as paths. */
  List<String> places();

  /** Returns a number that rises with every change, so that readers may keep results. */
  long revision();
}
