package org.fettlebench.desktop.threads.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.Section;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;

/** The thread's main figures in both units, with their source. */
final class ThreadFigures {
  private final Look look;
  private final LengthUnit first;
  private Composite grid;

  ThreadFigures(Look look, LengthUnit first) {
    this.look = look;
    this.first = first;
  }

  void fill(Section section, ThreadAnswer answer) {
    ScrewThread thread = answer.thread();
    grid = Layouts.wide(Layouts.columns(section.body(), 3));
    ((GridLayout) grid.getLayout()).verticalSpacing = 2;
    ((GridLayout) section.body().getLayout()).verticalSpacing = 3;
    head("");
    head(first.symbol());
    head(second().symbol());
    row("major diameter", thread.major());
    row(TappingWords.pitch(thread), thread.pitch());
    row("effective diameter", thread.effective());
    row("minor diameter of nut", thread.minorInternal());
    row("minor diameter of screw", thread.minorExternal());
    row("depth of thread, screw", depth(thread.major(), thread.minorExternal()));
    answer
        .limits()
        .ifPresent(
            allowed -> {
              row("hole in the nut, least", allowed.least());
              row("hole in the nut, most", allowed.most());
            });
    section.remark(
        "Form: "
            + thread.form().title()
            + ", per cent of thread against a depth of "
            + thread.form().percentDepthPerPitch()
            + " pitches.");
    section.remark("Sizes: " + TappingWords.source(thread.source()) + ".");
    answer
        .limits()
        .ifPresent(
            l ->
                section.remark(
                    "Hole: " + l.threadClass() + ", " + TappingWords.source(l.source()) + "."));
  }

  private static Length depth(Length major, Length minor) {
    return Length.ofNanometres(major.minus(minor).nanometres() / 2);
  }

  private LengthUnit second() {
    return first == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
  }

  private void head(String word) {
    Label label = Layouts.word(grid, look, word);
    label.setForeground(look.faint());
    label.setLayoutData(new GridData(SWT.END, SWT.CENTER, false, false));
  }

  private void row(String name, Length length) {
    Layouts.text(grid, look, name).setForeground(look.faint());
    figure(length, first);
    figure(length, second());
  }

  /** Threads are measured finer than lengths: to a micron, to a tenth of a thou. */
  private void figure(Length length, LengthUnit unit) {
    int decimals = unit == LengthUnit.INCH ? 4 : 3;
    Label label = Layouts.word(grid, look, LengthFormat.number(length, unit, decimals));
    label.setLayoutData(new GridData(SWT.END, SWT.CENTER, false, false));
  }
}
