package org.fettlebench.desktop.threads.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.desktop.threads.internal.ThreadAnswer.Clearance;
import org.fettlebench.desktop.threads.internal.sheet.FigureTable;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.BlindHole;

/** The figures of a thread and its holes as tables, and the lines that say where they come from. */
final class ThreadFigures {
  private ThreadFigures() {}

  /** Returns the main sizes in both units. */
  static FigureTable sizes(ThreadAnswer answer, LengthUnit first) {
    ScrewThread thread = answer.thread();
    FigureTable.Maker maker = FigureTable.ofLengths(first);
    maker.length("major diameter", thread.major());
    maker.length(TappingWords.pitch(thread), thread.pitch());
    maker.length("effective diameter", thread.effective());
    maker.length("minor diameter of nut", thread.minorInternal());
    maker.length("minor diameter of screw", thread.minorExternal());
    maker.length("depth of thread, screw", depth(thread.major(), thread.minorExternal()));
    answer
        .limits()
        .ifPresent(
            allowed -> {
              maker.length("hole in the nut, least", allowed.least());
              maker.length("hole in the nut, most", allowed.most());
            });
    return maker.made();
  }

  private static Length depth(Length major, Length minor) {
    return Length.ofNanometres(major.minus(minor).nanometres() / 2);
  }

  /** Returns form, sources and standing. */
  static String[] sources(ThreadAnswer answer) {
    ScrewThread thread = answer.thread();
    List<String> lines = new ArrayList<>();
    lines.add(
        "Form: "
            + thread.form().title()
            + ", per cent of thread against a depth of "
            + thread.form().percentDepthPerPitch()
            + " pitches.");
    lines.add("Sizes: " + TappingWords.source(thread.source()) + ".");
    answer
        .limits()
        .ifPresent(
            l ->
                lines.add(
                    "Hole: " + l.threadClass() + ", " + TappingWords.source(l.source()) + "."));
    return lines.toArray(String[]::new);
  }

  /** Returns the clearance holes. */
  static FigureTable clearance(ThreadAnswer answer, LengthUnit unit) {
    FigureTable.Maker maker = FigureTable.of("drill", "over thread", "where");
    for (Clearance hole : answer.clearance()) {
      maker.row(
          TappingWords.fit(hole),
          hole.drill().name(),
          LengthFormat.allowance(hole.clearance(), unit),
          hole.where().orElse("not held"));
    }
    return maker.made();
  }

  /** Returns the depths of a blind hole from the face, in both units. */
  static FigureTable depths(BlindHole hole, LengthUnit first) {
    FigureTable.Maker maker = FigureTable.ofLengths(first);
    maker.length("drill to shoulder", hole.shoulder());
    maker.length("drill to its tip", hole.drillTip());
    maker.length("full thread", hole.fullThread());
    maker.length("lead of the tap", hole.tapLead());
    maker.length("room for chips", hole.chipRoom());
    if (!hole.breaksThrough()) {
      maker.length("metal left", hole.left());
    }
    return maker.made();
  }
}
