package org.fettlebench.command.internal.head;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.command.internal.Cautions;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.Footnotes;
import org.fettlebench.command.internal.hole.DrillWords;
import org.fettlebench.command.internal.hole.HeldDrills;
import org.fettlebench.fasteners.HeadSink;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;

/** The cuts for the heads of a thread, in words and as data. */
record SinkAnswer(ScrewThread thread, List<HeadSink> cuts, HeldDrills held, LengthUnit unit) {
  /** Returns whether the one recess asked for is larger than every drill in its place. */
  boolean wanting() {
    return cuts.size() == 1
        && cuts.get(0).kind() == HeadSink.Kind.COUNTERBORE
        && cutter(cuts.get(0)).isEmpty();
  }

  String text() {
    Columns columns =
        new Columns()
            .right(2, 3, 4, 5, 6)
            .row(
                thread.designation(),
                "cut",
                "at the face " + unit.symbol(),
                Figures.other(unit).symbol(),
                "at least " + unit.symbol(),
                "deep " + unit.symbol(),
                Figures.other(unit).symbol(),
                "made by",
                "");
    Footnotes notes = new Footnotes();
    cuts.forEach(cut -> row(columns, notes, cut));
    return columns.text()
        + notes.text()
        + "\nA countersink is deep where its cone meets the hole; a counterbore where its flat is."
        + "\nCaution: "
        + Cautions.DRILLING;
  }

  private void row(Columns columns, Footnotes notes, HeadSink cut) {
    StringBuilder marks = new StringBuilder();
    cut.sources().forEach(source -> marks.append(notes.mark(Figures.source(source))));
    cut.notes().forEach(note -> marks.append(notes.mark(LengthFormat.turned(note, unit))));
    columns.row(
        cut.head().style(),
        cut.kind().words() + cut.angleDegrees().map(angle -> " " + degrees(angle)).orElse(""),
        LengthFormat.number(cut.diameter(), unit),
        LengthFormat.number(cut.diameter(), Figures.other(unit)),
        LengthFormat.number(cut.leastDiameter(), unit),
        depth(cut, unit),
        depth(cut, Figures.other(unit)),
        madeBy(cut),
        marks);
  }

  private static String degrees(double angle) {
    return (angle == Math.rint(angle) ? String.valueOf((long) angle) : String.valueOf(angle)) + "°";
  }

  private static String depth(HeadSink cut, LengthUnit unit) {
    return cut.kind() == HeadSink.Kind.SPOT_FACE && cut.depth().equals(Length.ZERO)
        ? "clean"
        : LengthFormat.number(cut.depth(), unit);
  }

  private String madeBy(HeadSink cut) {
    if (cut.kind() == HeadSink.Kind.COUNTERSINK) {
      return "a countersink of " + degrees(cut.angleDegrees().orElseThrow());
    }
    return cutter(cut)
        .map(
            drill ->
                "%s held (%s), its end ground flat"
                    .formatted(drill.name(), String.join("; ", held.places(drill))))
        .orElse("a cutter; no drill held is large enough");
  }

  private Optional<DrillSize> cutter(HeadSink cut) {
    if (cut.kind() == HeadSink.Kind.COUNTERSINK) {
      return Optional.empty();
    }
    List<DrillSize> sizes = held.sizes();
    return cut.smallestCutter(sizes.stream().map(DrillSize::diameter).toList())
        .flatMap(size -> sizes.stream().filter(d -> d.diameter().equals(size)).findFirst());
  }

  Map<String, Object> data() {
    return Data.of(
        "thread",
        thread.designation(),
        "cuts",
        cuts.stream().map(this::data).toList(),
        "cautions",
        List.of(Cautions.DRILLING));
  }

  private Object data(HeadSink cut) {
    return Data.of(
        "style", cut.head().style(),
        "title", cut.head().title(),
        "cut", cut.kind().words(),
        "headDiameterMm", Data.mm(cut.head().acrossCorners()),
        "headHeightMm", cut.head().height().map(Data::mm),
        "holeMm", Data.mm(cut.hole()),
        "holeIn", Data.in(cut.hole()),
        "diameterMm", Data.mm(cut.diameter()),
        "diameterIn", Data.in(cut.diameter()),
        "leastDiameterMm", Data.mm(cut.leastDiameter()),
        "leastDiameterIn", Data.in(cut.leastDiameter()),
        "angleDegrees", cut.angleDegrees().map(angle -> Data.rounded(angle, 3)),
        "depthMm", Data.mm(cut.depth()),
        "depthIn", Data.in(cut.depth()),
        "heldDrill", cutter(cut).map(DrillWords::data),
        "sources", cut.sources().stream().map(Figures::sourceData).toList(),
        "notes", cut.notes());
  }
}
