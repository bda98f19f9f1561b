package org.fettlebench.desktop.kits.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.Section;
import org.fettlebench.desktop.widgets.VerdictBadge;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.JointReport;

/** Why a joint's verdict is what it is, and what there is to fetch: lines with a marked word. */
final class Reasons {
  private final Look look;

  Reasons(Look look) {
    this.look = look;
  }

  /** Fills a section with findings, gravest first. */
  void fill(Section section, JointReport report, Font font) {
    Composite body = section.body();
    body.setLayout(Layouts.grid(1, 0));
    if (!report.joint().note().isBlank()) {
      Layouts.text(body, look, "The kit says: " + report.joint().note()).setFont(font);
    }
    for (Finding finding : report.findings()) {
      Composite column = tight(body);
      Composite head = Layouts.wide(Layouts.columns(column, 2));
      VerdictBadge badge = new VerdictBadge(head, look);
      badge.show(Marks.of(finding.weight()), finding.weight().word());
      Layouts.remark(head, look, finding.rule());
      Layouts.text(column, look, finding.sentence()).setFont(font);
      if (!finding.standing().isBlank()) {
        Layouts.remark(column, look, finding.standing());
      }
    }
  }

  /** Fills a section with what to bring to the bench. */
  void fetch(Section section, JointReport report, Font font) {
    Composite body = section.body();
    body.setLayout(Layouts.grid(1, 0));
    for (JointReport.Fetch fetch : report.fetch()) {
      Composite column = tight(body);
      String figures = fetch.figures().isEmpty() ? "" : ", " + fetch.figures();
      Layouts.text(column, look, fetch.what() + figures).setFont(font);
      Composite where = Layouts.wide(Layouts.columns(column, 2));
      VerdictBadge badge = new VerdictBadge(where, look).small();
      badge.show(Marks.of(fetch.state()), fetch.state().words());
      badge.setLayoutData(new GridData(SWT.LEFT, SWT.BEGINNING, false, false));
      Layouts.remark(where, look, from(fetch));
    }
  }

  /** Says where it is; what it is for only where that does not tell itself. */
  private static String from(JointReport.Fetch fetch) {
    return fetch.from().isBlank() ? fetch.role().words() : fetch.from();
  }

  private static Composite tight(Composite body) {
    Composite column = Layouts.wide(Layouts.columns(body, 1));
    ((GridLayout) column.getLayout()).verticalSpacing = 1;
    return column;
  }
}
