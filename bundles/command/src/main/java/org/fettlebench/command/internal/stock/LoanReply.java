package org.fettlebench.command.internal.stock;

import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.Reply;
import org.fettlebench.command.internal.Data;

/** The answer of commands that lend and take back. */
final class LoanReply {
  private LoanReply() {}

  static Reply of(Stock stock, StockLine before, String did) {
    StockLine now = stock.line(before.id()).orElseThrow();
    String out = now.lent() > 0 ? "; " + now.lent() + " out: " + now.holder() : "; none is out";
    return Reply.done(
        did
            + ": "
            + StockTexts.what(now)
            + ", "
            + now.place()
            + " (line "
            + now.id()
            + "): "
            + now.present()
            + " there now"
            + out,
        Data.of("line", StockTexts.data(now)));
  }
}
