package org.fettlebench.desktop.stock.internal;

import org.fettlebench.testkit.trade.RealTrade;

/** A club's list, and stocks that hold one. */
final class Bench {
  /** A list as a club might keep it, with a low mark, a worn tap and a drill among its lines. */
  static final String LIST =
      """
      kind,name,thread,style,diameter,length,material,place,condition,quantity,low-mark
      fastener,,2 BA,hexagon,,1/2 in,steel,Cabinet / Drawer 3,good,12,
      fastener,,2 BA,hexagon,,5/8 in,steel,Cabinet / Drawer 3,good,9,10
      fastener,,M5,socket-cap,,16 mm,steel,Metric / M5,good,40,
      drill,,,,No 22,,,Drill stand / Number,good,2,
      drill,,,,5/32 in,,,Drill stand / Fractional,good,1,
      tap,,2 BA,taper,,,,Tap box / BA,worn,1,
      sundry,Cutting oil,,,,,,Shelf 1,good,3,1
      """;

  private Bench() {}

  /** Returns a stock that holds a list. */
  static PaperStock holding(String list) {
    PaperStock stock = new PaperStock();
    stock.receive(RealTrade.STOCK_FILES.readStock("list.csv", list), "Ann Hall", "");
    return stock;
  }
}
