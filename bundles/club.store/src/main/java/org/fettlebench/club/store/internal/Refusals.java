package org.fettlebench.club.store.internal;

import java.sql.SQLException;
import org.fettlebench.club.ClubException;

/** The words in which the books refuse a change: what is there, what was asked, what to do. */
final class Refusals {
  private Refusals() {}

  static ClubException noLine(long lineId) {
    return new ClubException(
        "there is no stock line %d; look it up in the list of stock".formatted(lineId));
  }

  static ClubException noMovement(long movementId) {
    return new ClubException(
        "there is no movement %d; look it up in the line's history".formatted(movementId));
  }

  static ClubException undoneAlready(long movementId) {
    return new ClubException(
        "movement %d was undone already; to have it back, undo the entry that undid it"
            .formatted(movementId));
  }

  static ClubException nothingToUndo(long movementId) {
    return new ClubException(
        "movement %d changed nothing, so there is nothing to undo".formatted(movementId));
  }

  /** Such as "Drawer 3 holds 4 of 2 BA hexagon screw x 1/2 in, not 6; take 4, or count ...". */
  static ClubException tooFew(Transaction transaction, HeldLine line, int asked, String verb)
      throws SQLException {
    String onLoan = line.lent() == 0 ? "" : " (%d more on loan)".formatted(line.lent());
    String place = line.place(transaction);
    if (line.present() == 0) {
      return new ClubException(
          "%s holds none of %s%s, not %d; look in another place, or count what is there"
              .formatted(place, line.name(), onLoan, asked));
    }
    return new ClubException(
        "%s holds %d of %s%s, not %d; %s %d, or count what is there"
            .formatted(place, line.present(), line.name(), onLoan, asked, verb, line.present()));
  }

  static ClubException tooFewToUndo(Transaction transaction, HeldLine line, int needed)
      throws SQLException {
    return new ClubException(
        "%s holds %d of %s, too few to take away the %d that came in; count what is there"
            .formatted(line.place(transaction), line.present(), line.name(), needed));
  }

  static ClubException notOnLoan(HeldLine line, String member, int onLoan, int asked) {
    return new ClubException(
        "%s has %s of %s on loan, not %d; check the name and the quantity"
            .formatted(member, onLoan == 0 ? "none" : onLoan, line.name(), asked));
  }

  static int aboveNothing(String what, int quantity) {
    if (!(quantity > 0)) {
      throw new ClubException("%s is %d; it must be 1 or more".formatted(what, quantity));
    }
    return quantity;
  }
}
