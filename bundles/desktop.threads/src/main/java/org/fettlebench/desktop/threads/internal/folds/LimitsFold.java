package org.fettlebench.desktop.threads.internal.folds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.threads.internal.sheet.FigureTable;
import org.fettlebench.desktop.threads.internal.sheet.Fold;
import org.fettlebench.desktop.threads.internal.sheet.Form;
import org.fettlebench.desktop.threads.internal.sheet.TableCanvas;
import org.fettlebench.desktop.widgets.DrawingCanvas;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.ThreadSide;

/** The limits of the classes chosen for screw and nut: a table in both units and their zones. */
public final class LimitsFold {
  private final Desk desk;
  private final String pageId;
  private final LimitsBook book;
  private final Fold fold;
  private final Combo screw;
  private final Combo nut;
  private final TableCanvas table;
  private final DrawingCanvas canvas;
  private final Label remarks;
  private Optional<ScrewThread> thread = Optional.empty();
  private boolean setting;

  /** Makes the fold, folded until a person opens it. */
  public LimitsFold(Composite parent, Desk desk, String pageId, ThreadClasses classes) {
    this.desk = desk;
    this.pageId = pageId;
    this.book = new LimitsBook(classes);
    fold = new Fold(parent, desk, pageId, "limits", "Limits", false);
    Form form = new Form(fold.body(), desk, this::chosen);
    screw = form.typed("screw's class");
    nut = form.typed("nut's class");
    table = new TableCanvas(fold.body(), desk);
    canvas = new DrawingCanvas(fold.body(), desk);
    GridData size = new GridData(SWT.FILL, SWT.CENTER, true, false);
    size.heightHint = (int) (190 * desk.look().scale());
    canvas.setLayoutData(size);
    canvas.whenEmpty("The series names no standard for its limits.");
    remarks = fold.remarks();
    fold.whenOpened(this::fill);
  }

  /** Shows the limits of a thread. */
  public void show(ScrewThread looked) {
    if (!thread.equals(Optional.of(looked))) {
      thread = Optional.of(looked);
      setting = true;
      offer(screw, looked, ThreadSide.EXTERNAL);
      offer(nut, looked, ThreadSide.INTERNAL);
      setting = false;
    }
    fill();
  }

  private void offer(Combo combo, ScrewThread looked, ThreadSide side) {
    List<String> names = book.offered(looked, side);
    String wanted = desk.remembered(pageId, key(looked, side), "");
    Form.offer(combo, names, wanted);
    if (!wanted.isBlank() && !names.contains(wanted)) {
      // A class that was typed stays, though it is not among the usual ones.
      combo.setText(wanted);
    }
    combo.setEnabled(!names.isEmpty());
    if (names.isEmpty()) {
      combo.setText("");
    }
  }

  private static String key(ScrewThread looked, ThreadSide side) {
    return "class." + looked.series() + "." + side.word();
  }

  private void chosen() {
    if (!setting) {
      thread.ifPresent(
          looked -> {
            desk.remember(pageId, key(looked, ThreadSide.EXTERNAL), screw.getText());
            desk.remember(pageId, key(looked, ThreadSide.INTERNAL), nut.getText());
          });
      fill();
      fold.refit();
    }
  }

  private void fill() {
    thread.ifPresent(this::fill);
  }

  private void fill(ScrewThread looked) {
    List<String> refused = new ArrayList<>();
    Optional<LimitsOfThread> ofScrew = asked(looked, screw, ThreadSide.EXTERNAL, refused);
    Optional<LimitsOfThread> ofNut = asked(looked, nut, ThreadSide.INTERNAL, refused);
    fold.summary(
        ofScrew.isEmpty() && ofNut.isEmpty()
            ? "none listed"
            : String.join(" in ", both(ofScrew, ofNut).map(LimitsOfThread::threadClass).toList()));
    if (fold.isOpen()) {
      FigureTable.Maker maker = FigureTable.ofRanges(desk.unit());
      both(ofScrew, ofNut).forEach(limits -> add(maker, limits));
      table.show(maker.made());
      if (ofScrew.isPresent() || ofNut.isPresent()) {
        canvas.show(ZoneDrawing.of(looked, ofScrew, ofNut));
      } else {
        canvas.clear();
      }
      both(ofScrew, ofNut).flatMap(l -> l.notes().stream()).distinct().forEach(refused::add);
      String sources =
          SourceWords.of(
              both(ofScrew, ofNut)
                  .flatMap(l -> Stream.of(l.major(), l.effective(), l.minor()))
                  .map(range -> range.source()));
      Stream<String> lines = Stream.concat(refused.stream(), Stream.of(sources));
      Fold.tell(remarks, lines.filter(s -> !s.isBlank()).toArray(String[]::new));
    }
  }

  private Optional<LimitsOfThread> asked(
      ScrewThread looked, Combo combo, ThreadSide side, List<String> refused) {
    if (combo.getText().isBlank()) {
      return Optional.empty();
    }
    try {
      return Optional.of(book.asked(looked, combo.getText(), side));
    } catch (MeasureException none) {
      refused.add(none.getMessage());
      return Optional.empty();
    }
  }

  private static Stream<LimitsOfThread> both(
      Optional<LimitsOfThread> screw, Optional<LimitsOfThread> nut) {
    return Stream.concat(screw.stream(), nut.stream());
  }

  private static void add(FigureTable.Maker maker, LimitsOfThread limits) {
    maker.strong(limits.side().word() + ", " + limits.threadClass());
    maker.range("major", limits.major().least(), limits.major().most());
    maker.range("effective", limits.effective().least(), limits.effective().most());
    maker.range("minor", limits.minor().least(), limits.minor().most());
  }

  /** Returns the table that is shown, for the sheet of the thread. */
  public FigureTable table() {
    return table.table();
  }
}
