package org.fettlebench.desktop.threads.internal;

import java.util.Locale;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.threads.internal.ThreadAnswer.Clearance;
import org.fettlebench.desktop.threads.internal.ThreadAnswer.Tapping;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.tables.Source;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;

/** Says what there is to say of drills and holes. */
final class TappingWords {
  /** What wall charts want: more is much, less is little. */
  private static final double WANTED = 75;

  private TappingWords() {}

  /** Returns a per cent to whole figures, with a half where there is one. */
  static String percent(double percent) {
    return Figures.show(percent, percent == Math.rint(percent) ? 0 : 1) + " %";
  }

  static String sentence(Tapping tapping) {
    return tapping.drill().name()
        + ", "
        + DrillRule.percent(tapping.choice().percentOfThread())
        + " of thread, "
        + tapping.where().orElse("not held");
  }

  /** Returns the page's answer. */
  static String answer(ThreadAnswer answer, LengthUnit unit) {
    String thread = answer.thread().designation();
    return answer
        .chosen()
        .map(
            t ->
                thread
                    + ": drill "
                    + name(t.drill(), unit)
                    + " leaves "
                    + DrillRule.percent(t.choice().percentOfThread())
                    + " of thread")
        .orElse(thread + ": no drill will do");
  }

  /** Returns a drill's name, with its size behind unless the name is the size. */
  static String name(DrillSize drill, LengthUnit unit) {
    boolean isSize = drill.name().endsWith(unit.symbol()) && !drill.name().contains("/");
    return isSize
        ? drill.name()
        : drill.name() + " (" + LengthFormat.show(drill.diameter(), unit) + ")";
  }

  /** Returns where the drill is, what was wanted, and what is amiss. */
  static String because(ThreadAnswer answer) {
    String where =
        answer
            .chosen()
            .map(t -> t.where().map(w -> "It is in " + w + ". ").orElse("It is not held. "))
            .map(
                words ->
                    words
                        .replace("It is in out", "It is out")
                        .replace("It is in worn, ", "It is worn, in "))
            .orElse("");
    String wanted =
        "Wanted is "
            + percent(answer.wanted())
            + answer.habit().map(s -> usual(answer)).orElse(", as asked")
            + ".";
    String concern =
        answer.chosen().flatMap(t -> t.choice().concern()).map(c -> " Mind: " + c + ".").orElse("");
    return where + wanted + concern;
  }

  private static String usual(ThreadAnswer answer) {
    String material = answer.question().material();
    return material.isBlank() ? ", as wall charts take it" : ", usual in " + material;
  }

  /** Returns in few words what is amiss with a drill; empty if nothing is. */
  static String mind(Tapping tapping, LengthUnit unit) {
    return tapping
        .beyond()
        .map(
            off ->
                LengthFormat.show(off.abs(), unit, unit == LengthUnit.MILLIMETRE ? 3 : 4)
                    + (off.isPositive() ? " too large" : " too small"))
        .orElseGet(
            () ->
                tapping.choice().concern().isEmpty()
                    ? ""
                    : tapping.choice().percentOfThread() > WANTED
                        ? "much thread"
                        : "little thread");
  }

  static String source(Source source) {
    return source.citation() + " (" + source.standing().words() + ")";
  }

  static String fit(Clearance hole) {
    return hole.fit().name().toLowerCase(Locale.ROOT);
  }

  static String tap(StockLine tap) {
    return tap.goods().style().isEmpty() ? tap.goods().name() : tap.goods().style();
  }

  /** Returns the pitch with the threads per inch where the series has them. */
  static String pitch(ScrewThread thread) {
    return thread.threadsPerInch().map(tpi -> "pitch, " + tpi + " per inch").orElse("pitch");
  }
}
