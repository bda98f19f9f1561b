package org.fettlebench.desktop.seats.internal;

import java.util.Optional;
import java.util.function.DoubleFunction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.seats.internal.Practice.Margins;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.measure.Length;

/** What filing and drilling must leave; the usual figures until a person types their own. */
final class MarginFields extends Composite {
  private final Bench bench;
  private final FigureField cleanUp;
  private final FigureField filing;
  private final FigureField bush;
  private final Label standing;

  MarginFields(Composite parent, Desk desk, Bench bench) {
    super(parent, SWT.NONE);
    this.bench = bench;
    setBackground(parent.getBackground());
    Form form = new Form(this, desk, 2);
    standing = form.remark("");
    cleanUp = field(form, "Clean-up", mm -> with(mm, now().filingMm(), now().bushWallMm()));
    cleanUp.text().setToolTipText("Metal that the last drill must find on every side");
    filing = field(form, "Filed to", mm -> with(now().cleanUpMm(), mm, now().bushWallMm()));
    bush = field(form, "Bush wall", mm -> with(now().cleanUpMm(), now().filingMm(), mm));
  }

  private FigureField field(Form form, String name, DoubleFunction<Margins> change) {
    return form.figure(name, length -> typed(name, length, change)).brief();
  }

  private static Margins with(double cleanUpMm, double filingMm, double bushWallMm) {
    return new Margins(cleanUpMm, filingMm, bushWallMm);
  }

  private Margins now() {
    return bench.sketch().hole().practice().margins();
  }

  /** An emptied field leaves the figure as it is: without a margin nothing can be said. */
  private void typed(String name, Optional<Length> length, DoubleFunction<Margins> change) {
    length
        .map(Length::millimetres)
        .filter(mm -> mm >= 0)
        .ifPresent(
            mm -> {
              Margins after = change.apply(mm);
              bench.apply(
                  new Change<>(
                      "margin typed",
                      "margin " + name,
                      sketch ->
                          sketch.with(sketch.hole().with(sketch.hole().practice().with(after)))));
            });
  }

  void show() {
    Margins now = now();
    cleanUp.show(Optional.of(Length.ofMillimetres(now.cleanUpMm())));
    filing.show(Optional.of(Length.ofMillimetres(now.filingMm())));
    bush.show(Optional.of(Length.ofMillimetres(now.bushWallMm())));
    Layouts.say(
        standing,
        "Kept: what the last drill must find a side, how near filing ends to its place, a bush's"
            + " wall. "
            + (now.equals(Margins.USUAL)
                ? "These are " + Margins.HABIT + "; type your own."
                : "Figures as you gave them."));
  }

  void unitChanged() {
    cleanUp.unitChanged();
    filing.unitChanged();
    bush.unitChanged();
  }

  /** Returns the field of the clean-up, for tests. */
  FigureField cleanUp() {
    return cleanUp;
  }
}
