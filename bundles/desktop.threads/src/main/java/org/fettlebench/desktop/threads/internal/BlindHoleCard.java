package org.fettlebench.desktop.threads.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.tooling.BlindHole;
import org.fettlebench.tooling.TapLead;

/** Asks for a blind hole and shows its depths, to scale. */
final class BlindHoleCard {
  private final Desk desk;
  private final Fold fold;
  private final LengthField depth;
  private final LengthField metal;
  private final Combo lead;
  private final Label concerns;
  private final DrawingCanvas canvas;
  private final TableCanvas table;
  private final Label sources;

  BlindHoleCard(Composite parent, Desk desk, Runnable asked) {
    this.desk = desk;
    fold = new Fold(parent, desk, ThreadsPage.ID, "blind", "Blind hole", false);
    Form form = new Form(fold.body(), desk, asked);
    depth = form.length("full thread", "depth from the face");
    metal = form.length("metal", "thickness there");
    lead = form.choice("last tap");
    for (TapLead each : TapLead.values()) {
      lead.add(each.name().toLowerCase(Locale.ROOT));
    }
    lead.select(TapLead.BOTTOMING.ordinal());
    concerns = fold.remarks();
    concerns.setFont(desk.look().strong());
    concerns.setForeground(desk.look().ink());
    canvas = new DrawingCanvas(fold.body(), desk);
    GridData size = new GridData(SWT.FILL, SWT.CENTER, true, false);
    size.heightHint = (int) (220 * desk.look().scale());
    size.exclude = true;
    canvas.setLayoutData(size);
    canvas.setVisible(false);
    table = new TableCanvas(fold.body(), desk);
    sources = fold.remarks();
  }

  Optional<ThreadQuestion.Blind> asked() {
    Optional<Length> deep = depth.value().filter(Length::isPositive);
    Optional<Length> thick = metal.value().filter(Length::isPositive);
    TapLead last = TapLead.values()[Math.max(0, lead.getSelectionIndex())];
    return deep.flatMap(d -> thick.map(m -> new ThreadQuestion.Blind(d, m, last)));
  }

  void show(ThreadAnswer answer) {
    boolean there = answer.blind().isPresent();
    if (canvas.getVisible() != there) {
      canvas.setVisible(there);
      ((GridData) canvas.getLayoutData()).exclude = !there;
      canvas.requestLayout();
    }
    answer.blind().ifPresentOrElse(this::show, this::clear);
  }

  private void clear() {
    fold.summary("type its depth");
    canvas.clear();
    table.show(FigureTable.EMPTY);
    Fold.tell(concerns);
    Fold.tell(sources);
  }

  private void show(ThreadAnswer.Blind blind) {
    BlindHole hole = blind.hole();
    canvas.show(BlindHoleDrawing.of(blind.asked(), hole, desk.unit()));
    table.show(ThreadFigures.depths(hole, desk.unit()));
    fold.summary(
        hole.breaksThrough()
            ? "breaks through"
            : "drill " + LengthFormat.show(hole.shoulder(), desk.unit()) + " to the shoulder");
    Fold.tell(concerns, hole.concerns().toArray(String[]::new));
    List<String> lines = new ArrayList<>(List.of("Depths from the face."));
    hole.sources().stream().map(TappingWords::source).distinct().forEach(lines::add);
    Fold.tell(sources, lines.toArray(String[]::new));
  }

  FigureTable table() {
    return table.table();
  }
}
