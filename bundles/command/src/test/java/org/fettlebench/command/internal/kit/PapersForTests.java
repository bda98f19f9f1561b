package org.fettlebench.command.internal.kit;

import org.fettlebench.fits.SeatDrawings;
import org.fettlebench.kits.KitReports;
import org.fettlebench.paper.internal.BenchCardService;

/** What puts kits on paper, put together without a framework. */
public final class PapersForTests {
  private PapersForTests() {}

  /** Returns it with the suite's own printing. */
  public static KitPapers printing(SeatDrawings drawings, KitReports reports) {
    KitPapers papers = new KitPapers();
    papers.setCards(new BenchCardService(drawings, reports));
    return papers;
  }
}
