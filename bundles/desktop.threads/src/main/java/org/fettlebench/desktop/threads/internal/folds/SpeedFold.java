package org.fettlebench.desktop.threads.internal.folds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.threads.internal.sheet.FigureTable;
import org.fettlebench.desktop.threads.internal.sheet.Fold;
import org.fettlebench.desktop.threads.internal.sheet.Form;
import org.fettlebench.desktop.threads.internal.sheet.TableCanvas;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tooling.speed.CuttingOperation;
import org.fettlebench.tooling.speed.SpeedJob;
import org.fettlebench.tooling.speed.SpindleFit;
import org.fettlebench.tooling.speed.SpindleSpeed;
import org.fettlebench.tooling.speed.SpindleSpeeds;
import org.fettlebench.tooling.speed.ToolSteel;
import org.fettlebench.tooling.work.WorkMaterial;

/** How fast the spindle should turn, on the machine that a person has. */
public final class SpeedFold {
  private final Desk desk;
  private final String pageId;
  private final Supplier<Optional<SpindleSpeeds>> speeds;
  private final Fold fold;
  private final Combo operation;
  private final Combo material;
  private final Combo steel;
  private final Text machine;
  private final TableCanvas table;
  private final Label remarks;
  private Optional<Looked> looked = Optional.empty();
  private boolean setting;

  /**
   * Makes the fold, folded until a person opens it.
   *
   * @param speeds what works it out, while it is installed
   */
  public SpeedFold(
      Composite parent, Desk desk, String pageId, Supplier<Optional<SpindleSpeeds>> speeds) {
    this.desk = desk;
    this.pageId = pageId;
    this.speeds = speeds;
    fold = new Fold(parent, desk, pageId, "speed", "Spindle speed", false);
    Form form = new Form(fold.body(), desk, this::chosen);
    setting = true;
    operation = form.choice("to");
    material = form.choice("in");
    steel = form.choice("tool of");
    machine = form.text("machine, rpm", "60 to 2500, or its steps");
    table = new TableCanvas(fold.body(), desk);
    remarks = fold.remarks();
    Form.offer(
        operation,
        Arrays.stream(CuttingOperation.values()).map(CuttingOperation::word).toList(),
        "");
    Form.offer(
        steel,
        Arrays.stream(ToolSteel.values()).map(ToolSteel::words).toList(),
        desk.remembered(pageId, "speed.steel", ""));
    machine.setText(desk.remembered(pageId, "speed.machine", ""));
    setting = false;
    fold.whenOpened(this::fill);
  }

  /** Shows the speed for the drill that is looked at. */
  public void show(Looked now) {
    looked = Optional.of(now);
    setting = true;
    List<String> names = materials().stream().map(WorkMaterial::name).toList();
    Form.offer(material, names, desk.remembered(pageId, "speed.material", ""));
    setting = false;
    fill();
  }

  private CuttingOperation asked() {
    return CuttingOperation.values()[Math.max(0, operation.getSelectionIndex())];
  }

  private List<WorkMaterial> materials() {
    return speeds.get().map(service -> service.materials(asked())).orElse(List.of());
  }

  private void chosen() {
    if (!setting) {
      desk.remember(pageId, "speed.material", material.getText());
      desk.remember(pageId, "speed.steel", steel.getText());
      desk.remember(pageId, "speed.machine", machine.getText());
      looked.ifPresent(this::show);
      fold.refit();
    }
  }

  private void fill() {
    List<WorkMaterial> known = materials();
    int at = material.getSelectionIndex();
    if (looked.isPresent() && at >= 0 && at < known.size()) {
      fill(looked.get(), known.get(at));
    } else {
      fold.summary("nothing that works it out is installed");
    }
  }

  private void fill(Looked now, WorkMaterial work) {
    Length diameter = asked() == CuttingOperation.TAP ? now.thread().major() : now.hole();
    try {
      SpindleSpeed speed =
          speeds
              .get()
              .orElseThrow()
              .of(
                  new SpeedJob(
                      asked(),
                      diameter,
                      work,
                      ToolSteel.values()[Math.max(0, steel.getSelectionIndex())],
                      MachineLine.read(machine.getText())));
      fold.summary(rpm(speed.setRpm()) + ", " + asked().word() + " " + work.name());
      if (fold.isOpen()) {
        fill(speed);
      }
    } catch (MeasureException refused) {
      fold.summary("see what is asked");
      table.show(FigureTable.EMPTY);
      Fold.tell(remarks, refused.getMessage());
    }
  }

  private void fill(SpindleSpeed speed) {
    FigureTable.Maker maker = FigureTable.of("");
    maker.strong(speed.fit() == SpindleFit.ANY_MACHINE ? "begin at" : "set", rpm(speed.setRpm()));
    maker.row("the sources allow", rounded(speed.leastRpm()) + " to " + rpm(speed.mostRpm()));
    maker.row("cutting at", LengthFormat.showBoth(speed.job().diameter(), desk.unit()));
    table.show(maker.made());
    List<String> notes = new ArrayList<>();
    notes.add(
        speed.fit() == SpindleFit.ANY_MACHINE
            ? "Type the machine's speeds: they are remembered."
            : "The machine is " + speed.fit().words() + ".");
    speed.notes().forEach(note -> notes.add(note + "."));
    speed
        .surfaceSpeeds()
        .forEach(
            each ->
                notes.add(
                    Figures.show(each.leastMetresPerMinute(), 0)
                        + " to "
                        + Figures.show(each.mostMetresPerMinute(), 0)
                        + " m/min ("
                        + Figures.show(each.leastFeetPerMinute(), 0)
                        + " to "
                        + Figures.show(each.mostFeetPerMinute(), 0)
                        + " ft/min): "
                        + each.forWhat()
                        + "; "
                        + SourceWords.of(each.source())
                        + "."));
    Fold.tell(remarks, notes.toArray(String[]::new));
  }

  private static String rpm(double turns) {
    return rounded(turns) + " rpm";
  }

  /** Two figures are all that such speeds mean. */
  static String rounded(double turns) {
    double step = Math.pow(10, Math.floor(Math.log10(turns)) - 1);
    return Figures.show(Math.round(turns / step) * step, turns < 10 ? 1 : 0);
  }

  /** Returns the table that is shown, for the sheet of the thread. */
  public FigureTable table() {
    return table.table();
  }
}
