package org.fettlebench.desktop.threads.internal.folds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import org.fettlebench.desktop.widgets.LengthField;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.wires.MeasuringWires;
import org.fettlebench.threads.wires.OverWires;
import org.fettlebench.threads.wires.WireSizes;
import org.fettlebench.tooling.DrillSize;

/** Measuring over three wires, both ways: a size over wires wanted, or one that was measured. */
public final class WiresFold {
  private static final String BEST = "the best wire";

  private final Desk desk;
  private final MeasuringWires wires;
  private final ThreadClasses classes;
  private final Fold fold;
  private final Combo wire;
  private final LengthField measured;
  private final LengthField wanted;
  private final TableCanvas table;
  private final DrawingCanvas canvas;
  private final Label remarks;
  private Optional<Looked> looked = Optional.empty();
  private boolean setting;

  /** Makes the fold, folded until a person opens it. */
  public WiresFold(
      Composite parent, Desk desk, String pageId, MeasuringWires wires, ThreadClasses classes) {
    this.desk = desk;
    this.wires = wires;
    this.classes = classes;
    fold = new Fold(parent, desk, pageId, "wires", "Over wires", false);
    Form form = new Form(fold.body(), desk, this::chosen);
    wire = form.typed("wire");
    measured = form.length("measured over", "gives the effective");
    wanted = form.length("or effective", "the basic one");
    table = new TableCanvas(fold.body(), desk);
    canvas = new DrawingCanvas(fold.body(), desk);
    GridData size = new GridData(SWT.FILL, SWT.CENTER, true, false);
    size.heightHint = (int) (170 * desk.look().scale());
    canvas.setLayoutData(size);
    canvas.whenEmpty("The wires are drawn here, where they rest on the flanks.");
    remarks = fold.remarks();
    fold.whenOpened(this::fill);
  }

  /** Shows what measures a thread. */
  public void show(Looked now) {
    boolean other = looked.filter(was -> was.thread().equals(now.thread())).isEmpty();
    looked = Optional.of(now);
    if (other) {
      setting = true;
      List<String> names = new ArrayList<>(List.of(BEST));
      fitting(now).forEach(drill -> names.add(drill.name()));
      Form.offer(wire, names, BEST);
      setting = false;
    }
    fill();
  }

  /** Returns the drills held whose shanks fit, nearest to the best wire first. */
  private List<DrillSize> fitting(Looked now) {
    List<Length> sizes = now.held().stream().map(DrillSize::diameter).toList();
    ScrewThread thread = now.thread();
    return wires.choose(thread.form(), thread.pitch(), sizes).stream()
        .flatMap(
            size -> now.held().stream().filter(drill -> drill.diameter().equals(size)).limit(1))
        .toList();
  }

  private void chosen() {
    if (!setting && remarks != null) {
      fill();
      fold.refit();
    }
  }

  private void fill() {
    looked.ifPresent(this::fill);
  }

  private void fill(Looked now) {
    ScrewThread thread = now.thread();
    WireSizes sizes = wires.sizes(thread.form(), thread.pitch());
    fold.summary("best wire " + both(sizes.best()));
    if (!fold.isOpen()) {
      return;
    }
    FigureTable.Maker maker = FigureTable.ofLengths(desk.unit());
    maker.length("best wire", sizes.best());
    maker.length("least wire", sizes.least());
    maker.length("most wire", sizes.most());
    List<String> notes = new ArrayList<>();
    try {
      Length chosen = wire(now, sizes);
      OverWires over =
          measured
              .value()
              .map(size -> wires.effective(thread, chosen, size))
              .orElseGet(
                  () -> wires.over(thread, chosen, wanted.value().orElse(thread.effective())));
      figures(maker, over);
      limits(thread, chosen, over, maker, notes);
      canvas.show(WiresDrawing.of(thread, over, desk.unit()));
      notes.add(said());
      over.notes().forEach(note -> notes.add(note + "."));
    } catch (MeasureException refused) {
      canvas.clear();
      notes.add(refused.getMessage());
    }
    table.show(maker.made());
    Fold.tell(remarks, notes.stream().filter(s -> !s.isBlank()).toArray(String[]::new));
  }

  private String said() {
    return measured.value().isPresent()
        ? "From the size measured over wires."
        : wanted.value().isPresent()
            ? "For the effective diameter typed."
            : "For the basic effective diameter, until another is typed.";
  }

  private Length wire(Looked now, WireSizes sizes) {
    String typed = wire.getText().strip();
    if (typed.isEmpty() || typed.equals(BEST)) {
      return sizes.best();
    }
    return now.held().stream()
        .filter(drill -> drill.names().contains(typed))
        .map(DrillSize::diameter)
        .findFirst()
        .orElseGet(() -> LengthReader.read(typed, desk.unit()));
  }

  private void figures(FigureTable.Maker maker, OverWires over) {
    boolean back = measured.value().isPresent();
    maker.length("wire", over.wire());
    row(maker, "effective diameter", over.effective(), back);
    row(maker, "over three wires", over.overWires(), !back);
    maker.length("of it for the helix", over.helixCorrection());
  }

  private void row(FigureTable.Maker maker, String name, Length length, boolean strong) {
    String first = FigureTable.fine(length, desk.unit());
    String second = FigureTable.fine(length, FigureTable.other(desk.unit()));
    if (strong) {
      maker.strong(name, first, second);
    } else {
      maker.row(name, first, second);
    }
  }

  private void limits(
      ScrewThread thread,
      Length chosen,
      OverWires over,
      FigureTable.Maker maker,
      List<String> notes) {
    Optional<LimitsOfThread> screw =
        classes.classes(thread).stream()
            .findFirst()
            .flatMap(
                usual ->
                    classes.limits(thread, usual).stream()
                        .filter(l -> l.side() == ThreadSide.EXTERNAL)
                        .findFirst());
    screw.ifPresent(
        l -> {
          l.effective()
              .least()
              .ifPresent(
                  e ->
                      maker.length("over wires, least", wires.over(thread, chosen, e).overWires()));
          l.effective()
              .most()
              .ifPresent(
                  e -> maker.length("over wires, most", wires.over(thread, chosen, e).overWires()));
          String inside = l.effective().allows(over.effective()) ? "inside " : "outside ";
          notes.add(
              measured.value().isPresent()
                  ? "The effective diameter is " + inside + l.threadClass() + "."
                  : "Least and most are those of " + l.threadClass() + ".");
        });
  }

  /** Returns the table that is shown, for the sheet of the thread. */
  public FigureTable table() {
    return table.table();
  }

  private String both(Length length) {
    return FigureTable.fine(length, desk.unit()) + " " + desk.unit().symbol();
  }
}
