package org.fettlebench.desktop.kits.internal;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.CautionStrip;
import org.fettlebench.desktop.widgets.Cautions;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.Split;
import org.fettlebench.fits.SeatDrawings;
import org.fettlebench.kits.KitReport;
import org.fettlebench.kits.KitReports;
import org.fettlebench.measure.LengthUnit;

/** The page as it stands in the window: one kit, its answer, its joints or its short list. */
final class KitView extends Composite {
  /** For joints that hold pressure, in one strip. */
  private static final Cautions BOTH =
      new Cautions(
          Cautions.PRESSURE.brief() + " " + Cautions.DRILLING.brief(),
          Cautions.PRESSURE.full() + " " + Cautions.DRILLING.full());

  private final Desk desk;
  private final KitReports reports;
  private final KitHead head;
  private final StackLayout whole = new StackLayout();
  private final StackLayout inner = new StackLayout();
  private final EmptyKits empty;
  private final Composite filled;
  private final Composite views;
  private final JointsList joints;
  private final JointPanel panel;
  private final Split split;
  private final ShortList shorts;
  private final FaultyKit faulty;
  private final CautionStrip plain;
  private final CautionStrip pressure;
  private final KitDeeds deeds;
  private KitBook.Shown shown = KitBook.Shown.EMPTY;
  private Optional<KitReport> said = Optional.empty();
  private LengthUnit sayingUnit;
  private boolean shortShown;

  KitView(Composite parent, Desk desk, KitReports reports, SeatDrawings drawings, KitDeeds deeds) {
    super(parent, SWT.NONE);
    this.desk = desk;
    this.reports = reports;
    this.deeds = deeds;
    setBackground(desk.look().ground());
    setLayout(whole);
    Composite waiting = Layouts.page(this, desk.look());
    Layouts.remark(waiting, desk.look(), "Looking at the shelf \u2026");
    empty = new EmptyKits(Layouts.page(this, desk.look()), desk, deeds::open, deeds::lookRound);
    Layouts.fill(empty);
    filled = Layouts.page(this, desk.look());
    head = new KitHead(filled, desk, deeds.forHead(this::showShortList));
    views = new Composite(filled, SWT.NONE);
    views.setBackground(filled.getBackground());
    views.setLayout(inner);
    Layouts.fill(views);
    split = new Split(views, desk, SWT.HORIZONTAL, KitPage.ID, "joints-joint");
    joints = new JointsList(split.form(), desk, this::chosen);
    panel = new JointPanel(split.form(), desk, drawings);
    split.share(51, 49);
    shorts = new ShortList(views, desk);
    faulty = new FaultyKit(views, desk);
    plain = new CautionStrip(filled, desk.look(), Cautions.DRILLING);
    pressure = new CautionStrip(filled, desk.look(), BOTH);
    present(pressure, false);
    whole.topControl = waiting;
    inner.topControl = split.form();
    desk.onLookChange(this::lookChanged);
  }

  /** Shows what was looked at; what did not change is left as it stands. */
  void show(KitBook.Shown looked, boolean demo) {
    boolean same =
        looked.checked().isPresent() && looked.checked().get() == shown.checked().orElse(null);
    shown = looked;
    empty.offerDemo(demo);
    looked.checked().ifPresent(checked -> head.kits(looked.kits(), checked.kit()));
    if (!same) {
      looked.checked().ifPresent(this::show);
    }
    whole.topControl = looked.checked().isPresent() ? filled : empty.getParent();
    layout(true, true);
  }

  private void show(KitBook.Checked checked) {
    if (checked.report().isEmpty()) {
      said = Optional.empty();
      head.answer(KitAnswer.UNREADABLE, FaultsList.heading(checked.kit(), checked.faults()) + ".");
      faulty.show(checked.faults());
    } else {
      KitReport report = reports.inUnit(checked.report().get(), desk.unit());
      said = Optional.of(report);
      sayingUnit = desk.unit();
      head.answer(KitAnswer.of(report), reports.summary(report));
      shorts.show(report);
      joints.show(report);
      chooseAgain();
    }
    top();
  }

  /** After another check the joint that was chosen stays so; in another kit the worst is shown. */
  private void chooseAgain() {
    var selected = joints.list().selection();
    if (selected.isEmpty()) {
      joints.choose(desk.remembered(KitPage.ID, "joint", ""));
    } else {
      chosen(selected.get(0));
    }
  }

  private void chosen(JointRow row) {
    panel.show(row.report());
    cautionPressure(row.report().joint().holdsPressure());
    desk.remember(KitPage.ID, "joint", row.name());
  }

  private void cautionPressure(boolean holds) {
    if (((GridData) pressure.getLayoutData()).exclude == holds) {
      present(pressure, holds);
      present(plain, !holds);
      layout(true, true);
    }
  }

  private static void present(Control control, boolean there) {
    ((GridData) control.getLayoutData()).exclude = !there;
    control.setVisible(there);
  }

  /** Shows the short list, or the joints. */
  void showShortList(boolean wanted) {
    shortShown = wanted;
    top();
    begin();
  }

  private void top() {
    boolean readable = shown.report().isPresent();
    inner.topControl = !readable ? faulty : shortShown ? shorts : split.form();
    head.shortListShown(shortShown);
    views.layout(true, true);
  }

  /** Shows a joint of the kit, whatever the list is narrowed to. */
  void showJoint(String name) {
    shortShown = false;
    top();
    joints.unfilter();
    joints.choose(name);
  }

  private void lookChanged() {
    if (!isDisposed()) {
      if (said.isPresent() && sayingUnit != desk.unit()) {
        shown.checked().ifPresent(this::show);
      }
      panel.lookChanged();
      layout(true, true);
    }
  }

  boolean shortListShown() {
    return shortShown;
  }

  KitBook.Shown shown() {
    return shown;
  }

  JointsList joints() {
    return joints;
  }

  JointPanel panel() {
    return panel;
  }

  ShortList shorts() {
    return shorts;
  }

  KitDeeds deeds() {
    return deeds;
  }

  KitHead head() {
    return head;
  }

  /** Returns the view in front, for tests. */
  Control front() {
    return whole.topControl == filled ? inner.topControl : empty;
  }

  /** Returns the report as it is shown, its sentences in the unit the person chose. */
  Optional<KitReport> report() {
    return said;
  }

  /** Puts the keyboard where the work begins. */
  void begin() {
    if (whole.topControl == filled && inner.topControl == split.form()) {
      joints.begin();
    } else if (whole.topControl == filled && inner.topControl == shorts) {
      shorts.begin();
    } else {
      front().setFocus();
    }
  }
}
