package org.fettlebench.command.internal;

import org.fettlebench.paper.WallCharts;
import org.fettlebench.paper.internal.WallChartService;
import org.fettlebench.testkit.trade.RealTrade;

/** The real papers over the real trade. */
public final class PaperTrade {
  /** Charts for the wall. */
  public static final WallCharts WALL_CHARTS =
      new WallChartService(RealTrade.THREADS, RealTrade.DRILLS, RealTrade.HOLES, RealTrade.HEADS);

  private PaperTrade() {}
}
