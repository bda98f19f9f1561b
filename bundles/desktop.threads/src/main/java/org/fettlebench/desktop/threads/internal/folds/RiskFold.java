package org.fettlebench.desktop.threads.internal.folds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.threads.internal.sheet.FigureTable;
import org.fettlebench.desktop.threads.internal.sheet.Fold;
import org.fettlebench.desktop.threads.internal.sheet.Form;
import org.fettlebench.desktop.threads.internal.sheet.TableCanvas;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.LengthField;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tooling.risk.Assumed;
import org.fettlebench.tooling.risk.TapCure;
import org.fettlebench.tooling.risk.TapJob;
import org.fettlebench.tooling.risk.TapRisk;
import org.fettlebench.tooling.risk.TapRisks;
import org.fettlebench.tooling.risk.TapSort;
import org.fettlebench.tooling.work.WorkMaterial;

/** How near tapping the hole comes to breaking the tap, what that rests on, what lowers it. */
public final class RiskFold {
  private static final int MOST_CURES = 4;

  private final Desk desk;
  private final String pageId;
  private final Supplier<Optional<TapRisks>> risks;
  private final Fold fold;
  private final Combo material;
  private final Combo tap;
  private final LengthField depth;
  private final Button through;
  private final TableCanvas table;
  private final Label words;
  private final Label remarks;
  private Optional<Looked> looked = Optional.empty();
  private boolean setting;

  /**
   * Makes the fold, folded until a person opens it.
   *
   * @param risks what works it out, while it is installed
   */
  public RiskFold(Composite parent, Desk desk, String pageId, Supplier<Optional<TapRisks>> risks) {
    this.desk = desk;
    this.pageId = pageId;
    this.risks = risks;
    fold = new Fold(parent, desk, pageId, "risk", "Tap risk", false);
    Form form = new Form(fold.body(), desk, this::chosen);
    material = form.choice("tapping");
    tap = form.choice("with a");
    depth = form.length("thread deep", "one diameter");
    through = form.tick("hole goes right through");
    table = new TableCanvas(fold.body(), desk);
    words = fold.remarks();
    words.setFont(desk.look().text());
    words.setForeground(desk.look().ink());
    remarks = fold.remarks();
    setting = true;
    Form.offer(tap, Arrays.stream(TapSort.values()).map(TapSort::title).toList(), "");
    through.setSelection(true);
    setting = false;
    fold.whenOpened(this::fill);
  }

  /** Shows the risk for a thread in the hole that is looked at. */
  public void show(Looked now) {
    looked = Optional.of(now);
    setting = true;
    List<String> names =
        risks.get().map(TapRisks::materials).orElse(List.of()).stream()
            .map(WorkMaterial::name)
            .toList();
    Form.offer(material, names, desk.remembered(pageId, "risk.material", ""));
    setting = false;
    fill();
  }

  private void chosen() {
    if (!setting && remarks != null) {
      desk.remember(pageId, "risk.material", material.getText());
      fill();
      fold.refit();
    }
  }

  private void fill() {
    if (looked.isPresent() && risks.get().isPresent() && material.getSelectionIndex() >= 0) {
      fill(looked.get(), risks.get().get());
    } else {
      fold.summary("nothing that works it out is installed");
    }
  }

  private void fill(Looked now, TapRisks service) {
    WorkMaterial work = service.materials().get(material.getSelectionIndex());
    TapSort sort = TapSort.values()[Math.max(0, tap.getSelectionIndex())];
    Length deep = depth.value().filter(Length::isPositive).orElse(now.thread().major());
    try {
      TapJob job =
          new TapJob(
              now.thread(), now.hole(), work, deep, through.getSelection(), sort, Optional.empty());
      TapRisk risk = service.of(job, now.held());
      fold.summary(Figures.show(risk.ratio(), 2) + " of what breaks the tap, in " + work.name());
      if (fold.isOpen()) {
        fill(risk);
      }
    } catch (MeasureException refused) {
      fold.summary("see what is asked");
      table.show(FigureTable.EMPTY);
      Fold.tell(words, refused.getMessage());
      Fold.tell(remarks);
    }
  }

  private void fill(TapRisk risk) {
    FigureTable.Maker maker = FigureTable.of("");
    maker.strong("cutting over breaking torque", Figures.show(risk.ratio(), 2));
    maker.row(
        "by kindest and hardest assumptions",
        Figures.show(risk.ratioLeast(), 2) + " to " + Figures.show(risk.ratioMost(), 2));
    maker.row("torque to cut", torque(risk.cuttingTorqueNm()));
    maker.row("torque that breaks the core", torque(risk.breakingTorqueNm()));
    maker.row("thread", Figures.show(risk.percentOfThread(), 0) + " %");
    maker.row(
        "core between " + risk.flutes() + " flutes", LengthFormat.show(risk.core(), desk.unit()));
    table.show(maker.made());
    List<String> said = new ArrayList<>();
    said.add("The tap: " + risk.verdict().words() + ".");
    risk.cures().stream().limit(MOST_CURES).forEach(cure -> said.add(words(cure)));
    Fold.tell(words, said.toArray(String[]::new));
    List<String> notes = new ArrayList<>();
    if (depth.value().isEmpty()) {
      notes.add(
          "Depth: one diameter, "
              + LengthFormat.showBoth(risk.job().depth(), desk.unit())
              + ", until another is typed.");
    }
    for (Assumed assumed : risk.assumed()) {
      notes.add(
          assumed.what() + ": " + assumed.figure() + ", " + SourceWords.of(assumed.source()) + ".");
    }
    risk.notes().forEach(note -> notes.add(note + "."));
    Fold.tell(remarks, notes.toArray(String[]::new));
  }

  private static String words(TapCure cure) {
    return "\u2022 " + cure.words() + " \u2192 " + Figures.show(cure.ratio(), 2);
  }

  private static String torque(double newtonMetres) {
    return Figures.show(newtonMetres, newtonMetres < 1 ? 3 : 2) + " N m";
  }

  /** Returns the table that is shown, for the sheet of the thread. */
  public FigureTable table() {
    return table.table();
  }
}
