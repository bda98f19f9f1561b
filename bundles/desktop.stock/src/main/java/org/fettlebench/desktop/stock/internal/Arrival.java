package org.fettlebench.desktop.stock.internal;

import java.util.Optional;
import org.fettlebench.club.ClubException;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.stock.internal.Outcome.Field;
import org.fettlebench.desktop.stock.internal.Outcome.Refused;
import org.fettlebench.kits.StockFiles;

/**
 * Something that came in, as typed.
 *
 * @param what as a person says it: {@code 2 BA hexagon x 1/2 in steel}
 * @param sundry whether to take the words as they are, as the name of a sundry thing
 * @param quantity how many
 * @param place where to
 * @param worn whether it is worn
 * @param lowMark how many should always be there; may be empty
 */
record Arrival(
    String what, boolean sundry, String quantity, String place, boolean worn, String lowMark) {

  /** A receipt, or the field to mend. */
  record Read(Optional<Receipt> receipt, Optional<Refused> refused) {
    static Read refused(Field field, String why) {
      return new Read(Optional.empty(), Optional.of(new Refused(field, why)));
    }
  }

  Read read(StockFiles files) {
    Field field = Field.WHAT;
    try {
      Goods goods = goods(files);
      field = Field.QUANTITY;
      int many = Whole.read("How many", quantity, 1);
      field = Field.LOW_MARK;
      Optional<Integer> mark =
          lowMark.isBlank()
              ? Optional.empty()
              : Optional.of(Whole.read("The low mark", lowMark, 0));
      field = Field.PLACE;
      return new Read(
          Optional.of(new Receipt(goods, tidy(place), condition(), many, mark)), Optional.empty());
    } catch (IllegalArgumentException | ClubException refused) {
      return Read.refused(field, refused.getMessage());
    }
  }

  /** Reads what came in; the message of a refusal is for people. */
  Goods goods(StockFiles files) {
    return sundry
        ? new Goods(Goods.Kind.SUNDRY, what, "", "", Optional.empty(), Optional.empty(), "")
        : files.readGoods(what);
  }

  private StockLine.Condition condition() {
    return worn ? StockLine.Condition.WORN : StockLine.Condition.GOOD;
  }

  /** Places are paths with a slash between blanks, however it was typed. */
  private static String tidy(String typed) {
    return typed.strip().replaceAll("\\s*/\\s*", Places.PART).replaceAll("\\s+", " ");
  }
}
