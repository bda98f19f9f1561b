package org.fettlebench.desktop.threads.internal.compare;

import java.util.function.Function;
import org.fettlebench.desktop.threads.internal.sheet.FigureTable;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;

/** The figures of two threads beside each other, in both units, with what the nut has more. */
final class CrossingTable {
  private CrossingTable() {}

  static FigureTable of(Crossing crossing, int threads, LengthUnit first) {
    FigureTable.Maker maker = FigureTable.of("screw", "nut", "more");
    maker.strong("", crossing.screw().designation(), crossing.nut().designation(), "");
    in(maker, crossing, first);
    in(maker, crossing, FigureTable.other(first));
    maker.row("angle", degrees(crossing.screw()), degrees(crossing.nut()), "");
    maker.row("per inch", perInch(crossing.screw()), perInch(crossing.nut()), "");
    double deepest = CrossingDrawing.deepestMm(crossing, threads);
    maker.row("overlap", "", "", CrossingWords.fine(deepest, first));
    return maker.made();
  }

  private static void in(FigureTable.Maker maker, Crossing crossing, LengthUnit unit) {
    maker.strong(unit.symbol());
    row(maker, "major", crossing, unit, ScrewThread::major, ScrewThread::major);
    row(maker, "pitch", crossing, unit, ScrewThread::pitch, ScrewThread::pitch);
    row(maker, "effective", crossing, unit, ScrewThread::effective, ScrewThread::effective);
    row(maker, "minor", crossing, unit, ScrewThread::minorExternal, ScrewThread::minorInternal);
  }

  private static void row(
      FigureTable.Maker maker,
      String name,
      Crossing crossing,
      LengthUnit unit,
      Function<ScrewThread, Length> ofScrew,
      Function<ScrewThread, Length> ofNut) {
    Length screw = ofScrew.apply(crossing.screw());
    Length nut = ofNut.apply(crossing.nut());
    maker.row(
        name,
        FigureTable.fine(screw, unit),
        FigureTable.fine(nut, unit),
        FigureTable.fine(nut.minus(screw), unit));
  }

  private static String degrees(ScrewThread thread) {
    double angle = thread.form().includedAngleDegrees();
    return (angle == Math.rint(angle) ? String.valueOf((int) angle) : String.valueOf(angle))
        + "\u00b0";
  }

  private static String perInch(ScrewThread thread) {
    return thread
        .threadsPerInch()
        .orElseGet(
            () ->
                String.format(java.util.Locale.ROOT, "%.2f", 25.4 / thread.pitch().millimetres()));
  }
}
