package org.fettlebench.desktop.castings.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.PlacingWords;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;

/** The table as text with tabs, as a spreadsheet takes it. */
final class TableText {
  private TableText() {}

  static String of(Sketch sketch, Reply reply, LengthUnit unit) {
    List<String> lines = new ArrayList<>();
    String symbol = unit.symbol();
    lines.add(
        String.join(
            "\t",
            "Face",
            "Looks",
            Figures.head("Drawing", symbol),
            Figures.head("Cut", symbol),
            Figures.head("May be out", symbol),
            Figures.head("Comes off least", symbol),
            Figures.head("Comes off most", symbol),
            Figures.head("Spare", symbol),
            ""));
    for (int i = 0; i < sketch.rows().size(); i++) {
      lines.add(row(sketch, reply, i, unit));
    }
    reply
        .answer()
        .ifPresent(
            placing -> {
              PlacingWords words = new PlacingWords(placing, unit);
              lines.add(words.verdict() + "\t" + words.spare());
            });
    return String.join("\n", lines);
  }

  private static String row(Sketch sketch, Reply reply, int row, LengthUnit unit) {
    FaceRow face = sketch.rows().get(row);
    List<String> cells = new ArrayList<>();
    cells.add(sketch.names().get(row));
    cells.add(face.looks().words());
    cells.add(face.finished().shown(unit));
    cells.add((face.cut().blank() ? sketch.cut() : face.cut()).shown(unit));
    cells.add((face.mayBeOut().blank() ? sketch.mayBeOut() : face.mayBeOut()).shown(unit));
    reply
        .coming(row)
        .ifPresent(
            one -> {
              cells.add(figure(one.leastMm(), unit));
              cells.add(figure(one.mostMm(), unit));
              cells.add(figure(one.spareMm(), unit));
              cells.add(governs(one));
            });
    return String.join("\t", cells);
  }

  private static String governs(Placing.Coming one) {
    return one.governs() ? "governs" : "";
  }

  private static String figure(double millimetres, LengthUnit unit) {
    return Figures.figure(Length.ofMillimetres(millimetres), unit);
  }
}
