package org.fettlebench.club;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The club's stock as a ledger of movements. Each change is one transaction: when the call returns
 * it is on disk, when it throws nothing has changed. A line's quantity is the sum of its movements;
 * it never goes below nothing, and no movement is ever deleted or altered.
 *
 * <p>A member and a note may be empty where nobody said; at most 120 and 500 characters, one line.
 * Every method may be called on any thread, and throws the store's own exception if the store
 * cannot be reached.
 */
@ProviderType
public interface Stock {
  /** Returns all lines, by kind, thread, name and place; those that hold nothing are among them. */
  List<StockLine> lines();

  /** Finds a line. */
  Optional<StockLine> line(long id);

  /** Returns the movements of a line, newest first; none if there is no such line. */
  List<Movement> movements(long lineId);

  /**
   * Returns all movements after a key, oldest first, at most {@code most}. Keys rise in the order
   * in which changes came to be on disk, so that nobody who reads on from the last key misses one.
   *
   * @param movementId the last key seen; 0 to begin
   * @param most one or more
   */
  List<Movement> movementsAfter(long movementId, int most);

  /**
   * Receives things, all or none. Goods go to the line of equal goods, place and condition, which
   * is made if there is none; a low mark in the receipt becomes the line's.
   *
   * @return a movement for each receipt, in their order
   * @throws ClubException if a line would hold more than can be counted
   */
  List<Movement> receive(List<Receipt> receipts, String member, String note);

  /**
   * Takes things out.
   *
   * @throws ClubException if the quantity is not above nothing, fewer are present (those on loan
   *     are not), or the line does not exist
   */
  Movement take(long lineId, int quantity, String member, String note);

  /**
   * Brings back things that were taken and not used.
   *
   * @throws ClubException if the quantity is not above nothing, or the line does not exist
   */
  Movement putBack(long lineId, int quantity, String member, String note);

  /**
   * Throws things away.
   *
   * @throws ClubException as for taking
   */
  Movement scrap(long lineId, int quantity, String member, String note);

  /**
   * Sets what is present to what was counted in the place; the difference becomes the movement,
   * also when there is none. What is out on loan is not in the place to be counted, and is kept on
   * top.
   *
   * @throws ClubException if the count is below nothing, or the line does not exist
   */
  Movement count(long lineId, int counted, String member, String note);

  /**
   * Undoes a movement by a counter-entry, which may itself be undone.
   *
   * @throws ClubException if there is no such movement, it was undone already, it changed nothing,
   *     or too few are present to undo it
   */
  Movement undo(long movementId, String member);

  /**
   * Undoes several movements in the given order, all or none.
   *
   * @return a counter-entry for each, in their order
   * @throws ClubException as for one
   */
  List<Movement> undoAll(List<Long> movementIds, String member);

  /**
   * Lends things to a member. They still belong to the line but are not present.
   *
   * @throws ClubException if no member is named, the quantity is not above nothing, fewer are
   *     present, or the line does not exist
   */
  void lend(long lineId, int quantity, String member, Optional<LocalDate> due);

  /**
   * Takes back things that a member had on loan, those that are due first before others.
   *
   * @throws ClubException if the quantity is not above nothing, the member has fewer on loan, or
   *     the line does not exist
   */
  void giveBack(long lineId, int quantity, String member);

  /** Returns the names of members seen so far, in alphabetical order. */
  List<String> members();

  /** Returns the places used so far, as paths, in alphabetical order. */
  List<String> places();

  /**
   * Returns a number that rises with every change, so that readers may keep results as long as it
   * stays. It costs nothing to ask, waits for nothing, and begins anew with the suite.
   */
  long revision();
}
