package org.fettlebench.desktop.threads.internal.folds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.threads.internal.sheet.FigureTable;
import org.fettlebench.desktop.threads.internal.sheet.Fold;
import org.fettlebench.desktop.threads.internal.sheet.Form;
import org.fettlebench.desktop.threads.internal.sheet.TableCanvas;
import org.fettlebench.desktop.widgets.CautionStrip;
import org.fettlebench.desktop.widgets.Cautions;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.LengthField;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.strength.JointStrength;
import org.fettlebench.threads.strength.Material;
import org.fettlebench.threads.strength.Materials;
import org.fettlebench.threads.strength.ThreadStrength;
import org.fettlebench.threads.strength.ThreadedJoint;

/** What a joint of two materials bears, what gives way first, and the torque for a pull. */
public final class StrengthFold {
  private static final double LBF = 4.4482216152605;
  private static final double LBF_INCH = 0.1129848290276167;

  private final Desk desk;
  private final String pageId;
  private final Materials materials;
  private final ThreadStrength strength;
  private final Fold fold;
  private final Combo screw;
  private final Combo nut;
  private final LengthField engagement;
  private final Text pull;
  private final Text friction;
  private final TableCanvas table;
  private final Label remarks;
  private Optional<Looked> looked = Optional.empty();
  private boolean setting;

  /** Makes the fold, folded until a person opens it. */
  public StrengthFold(
      Composite parent, Desk desk, String pageId, Materials materials, ThreadStrength strength) {
    this.desk = desk;
    this.pageId = pageId;
    this.materials = materials;
    this.strength = strength;
    fold = new Fold(parent, desk, pageId, "strength", "Strength", false);
    Form form = new Form(fold.body(), desk, this::chosen);
    screw = form.choice("screw of");
    nut = form.choice("nut of");
    engagement = form.length("engaged", "one diameter");
    pull = form.text("pull, N", "to tighten to");
    friction = form.text("friction", "0.02 to 0.6");
    table = new TableCanvas(fold.body(), desk);
    remarks = fold.remarks();
    new CautionStrip(fold.body(), desk.look(), Cautions.PRESSURE);
    fold.whenOpened(this::fill);
  }

  /** Shows the strength of a thread in the hole that is looked at. */
  public void show(Looked now) {
    looked = Optional.of(now);
    setting = true;
    List<String> names = materials.all().stream().map(Material::name).toList();
    Form.offer(screw, names, desk.remembered(pageId, "strength.screw", ""));
    Form.offer(nut, names, desk.remembered(pageId, "strength.nut", ""));
    setting = false;
    fill();
  }

  private void chosen() {
    if (!setting && remarks != null) {
      desk.remember(pageId, "strength.screw", screw.getText());
      desk.remember(pageId, "strength.nut", nut.getText());
      fill();
      fold.refit();
    }
  }

  private void fill() {
    looked.ifPresent(this::fill);
  }

  private void fill(Looked now) {
    Optional<Material> ofScrew = materials.find(screw.getText());
    Optional<Material> ofNut = materials.find(nut.getText());
    if (ofScrew.isEmpty() || ofNut.isEmpty()) {
      fold.summary("no material is listed");
      return;
    }
    try {
      Length engaged = engagement.value().orElse(now.thread().major());
      JointStrength joint =
          strength.of(
              new ThreadedJoint(
                  now.thread(),
                  Optional.empty(),
                  ofScrew.get(),
                  ofNut.get(),
                  engaged,
                  now.drill().map(drill -> drill.diameter())));
      fold.summary(joint.givesWay().words() + " at " + kilonewtons(least(joint)));
      if (fold.isOpen()) {
        fill(now, joint);
      }
    } catch (MeasureException refused) {
      fold.summary("see what is asked");
      table.show(FigureTable.EMPTY);
      Fold.tell(remarks, refused.getMessage());
    }
  }

  private static double least(JointStrength joint) {
    return Math.min(
        joint.screwBreaksN(), Math.min(joint.screwThreadStripsN(), joint.nutThreadStripsN()));
  }

  private static String kilonewtons(double newtons) {
    return Figures.show(newtons / 1000, newtons < 10_000 ? 2 : 1) + " kN";
  }

  private void fill(Looked now, JointStrength joint) {
    List<String> notes = new ArrayList<>();
    FigureTable.Maker maker = FigureTable.of("", "");
    double area = joint.stressArea().mm2();
    maker.row(
        "stress area",
        Figures.show(area, 2) + " mm\u00b2",
        Figures.show(area / 645.16, 4) + " in\u00b2");
    load(maker, joint, "the screw breaks", joint.screwBreaksN());
    load(maker, joint, "the screw's thread strips", joint.screwThreadStripsN());
    load(maker, joint, "the hole's thread strips", joint.nutThreadStripsN());
    Length least = joint.leastEngagement();
    maker.row(
        "least engagement",
        LengthFormat.show(least, desk.unit()),
        LengthFormat.show(least, FigureTable.other(desk.unit())));
    torque(now, maker, notes);
    table.show(maker.made());
    notes.add(
        "Engaged: "
            + LengthFormat.showBoth(joint.joint().engagement(), desk.unit())
            + (engagement.value().isEmpty() ? ", one diameter until another is typed" : "")
            + ". At the least engagement the screw breaks before a thread strips.");
    joint.notes().forEach(note -> notes.add(capital(note) + "."));
    notes.add("Stress area: " + SourceWords.of(joint.stressArea().source()) + ".");
    notes.add("Screw: " + SourceWords.of(joint.joint().screw().source()) + ".");
    notes.add("Nut: " + SourceWords.of(joint.joint().nut().source()) + ".");
    Fold.tell(remarks, notes.toArray(String[]::new));
  }

  private static void load(
      FigureTable.Maker maker, JointStrength joint, String name, double newtons) {
    String[] cells = {kilonewtons(newtons), Figures.show(newtons / LBF, 0) + " lbf"};
    if (newtons == least(joint)) {
      maker.strong(name, cells);
    } else {
      maker.row(name, cells);
    }
  }

  private void torque(Looked now, FigureTable.Maker maker, List<String> notes) {
    if (pull.getText().isBlank() || friction.getText().isBlank()) {
      notes.add(
          "Torque: type the pull and the friction; friction differs too much to be taken for"
              + " granted.");
      return;
    }
    double pullN = number("pull", pull.getText());
    double coefficient = number("friction", friction.getText());
    double torque = strength.torqueNm(now.thread(), pullN, coefficient);
    maker.strong(
        "torque",
        Figures.show(torque, torque < 1 ? 3 : 2) + " N m",
        Figures.show(torque / LBF_INCH, 1) + " lbf in");
    notes.add(
        "Torque for "
            + Figures.show(pullN, 0)
            + " N with the friction typed, "
            + coefficient
            + ", at thread and head (Shigley, Mechanical Engineering Design, 9th edition, chapter"
            + " 8).");
  }

  private static double number(String name, String typed) {
    String plain = typed.strip().replace(',', '.');
    if (!plain.matches("\\d{1,8}(\\.\\d{1,4})?|\\.\\d{1,4}")) {
      throw new MeasureException(
          name
              + " \u201c"
              + typed.strip()
              + "\u201d is no figure; type one such as "
              + (name.equals("pull") ? "2000" : "0.15"));
    }
    return Double.parseDouble(plain);
  }

  private static String capital(String note) {
    return note.isEmpty() ? note : Character.toUpperCase(note.charAt(0)) + note.substring(1);
  }

  /** Returns the table that is shown, for the sheet of the thread. */
  public FigureTable table() {
    return table.table();
  }
}
