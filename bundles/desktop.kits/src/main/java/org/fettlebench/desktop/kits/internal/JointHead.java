package org.fettlebench.desktop.kits.internal;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.VerdictBadge;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointReport;

/** What a joint is, its verdict, and how far its hole may be out. */
final class JointHead extends Composite {
  private final Desk desk;
  private final Label name;
  private final Label detail;
  private final VerdictBadge badge;
  private final Label room;
  private final Composite trial;
  private final Label tried;

  JointHead(Composite parent, Desk desk, Runnable back) {
    super(parent, SWT.NONE);
    this.desk = desk;
    setBackground(parent.getBackground());
    GridLayout grid = Layouts.grid(1, 0);
    grid.verticalSpacing = 2;
    setLayout(grid);
    Layouts.wide(this);
    Composite title = Layouts.wide(Layouts.columns(this, 2));
    name = Layouts.word(title, desk.look(), "");
    name.setFont(desk.look().heading());
    detail = Layouts.text(title, desk.look(), "");
    detail.setForeground(desk.look().faint());
    ((GridData) detail.getLayoutData()).verticalAlignment = SWT.CENTER;
    Composite verdict = Layouts.wide(Layouts.columns(this, 2));
    badge = new VerdictBadge(verdict, desk.look()).large();
    badge.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
    room = Layouts.text(verdict, desk.look(), "");
    ((GridData) room.getLayoutData()).verticalAlignment = SWT.CENTER;
    trial = Layouts.wide(Layouts.columns(this, 2));
    tried = Layouts.text(trial, desk.look(), "");
    tried.setForeground(desk.look().accent());
    tried.setFont(desk.look().strong());
    ((GridData) tried.getLayoutData()).verticalAlignment = SWT.CENTER;
    Button return0 = Layouts.button(trial, desk.look(), "Back &to the kit\u2019s", back);
    return0.setToolTipText("Ctrl+0");
  }

  /** Shows a joint, with a choice in place of what the kit means, if one is being tried. */
  void show(JointReport report, Optional<Choice> choice) {
    Joint joint = report.joint();
    name.setText(Layouts.escaped(joint.name()));
    detail.setText(
        Layouts.escaped(
            joint.count()
                + " off "
                + joint.fastener().title()
                + (joint.part().isBlank() ? "" : ", " + joint.part())));
    Optional<SeatAnswer> seat = choice.isPresent() ? choice.get().after() : report.seat();
    verdict(report, choice, seat);
    tried.setText(
        choice
            .map(each -> "Shown instead of the kit\u2019s: " + Layouts.escaped(each.sentence()))
            .orElse(""));
    present(trial, choice.isPresent());
    layout(true, true);
    requestLayout();
  }

  private void verdict(JointReport report, Optional<Choice> choice, Optional<SeatAnswer> seat) {
    JointRow row = new JointRow(0, report);
    if (choice.isPresent() && seat.isPresent()) {
      badge.show(Marks.of(seat.get().verdict()), "then " + seat.get().verdict().word());
    } else {
      badge.show(row.mark(), row.word());
    }
    String words =
        seat.map(answer -> SeatWords.room(answer, desk.unit()))
            .orElse("No seat was measured, so nothing says whether the head sits.");
    boolean otherwise = choice.isEmpty() && row.word().equals("fails");
    room.setText(Layouts.escaped(otherwise ? gravest(report) : words));
    room.setToolTipText(
        seat.map(answer -> answer.question().errorMeans())
            .map(means -> "Expected error: " + means)
            .orElse(null));
  }

  private static String gravest(JointReport report) {
    return report.findings().stream().findFirst().map(Finding::sentence).orElse("");
  }

  private static void present(Control control, boolean there) {
    ((GridData) control.getLayoutData()).exclude = !there;
    control.setVisible(there);
  }
}
