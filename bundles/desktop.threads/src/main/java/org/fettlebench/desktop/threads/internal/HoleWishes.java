package org.fettlebench.desktop.threads.internal;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;

/** What the hole is wanted for: material, per cent of thread, held drills or all there are. */
final class HoleWishes {
  private static final String MOST = "any metal";

  private final Combo material;
  private final Text percent;
  private final Button catalogue;

  HoleWishes(Composite row, Desk desk, List<String> materials, Runnable changed) {
    material = new Combo(cell(row, desk, "in"), SWT.DROP_DOWN | SWT.READ_ONLY);
    material.setFont(desk.look().text());
    material.setForeground(desk.look().ink());
    material.add(MOST);
    materials.forEach(material::add);
    material.select(0);
    material.addListener(SWT.Selection, event -> changed.run());
    percent = new Text(cell(row, desk, "per cent"), SWT.SINGLE | SWT.BORDER);
    percent.setFont(desk.look().text());
    percent.setBackground(desk.look().sheet());
    percent.setForeground(desk.look().ink());
    percent.setMessage("usual");
    percent.setToolTipText(
        "Per cent of thread, above 0 to 100; empty for what is usual in the material");
    Layouts.characters(percent, 6);
    percent.addListener(SWT.Modify, event -> changed.run());
    catalogue = new Button(row, SWT.CHECK);
    catalogue.setText("drills &not held too");
    catalogue.setFont(desk.look().text());
    catalogue.setForeground(desk.look().ink());
    catalogue.setBackground(row.getBackground());
    catalogue.addListener(SWT.Selection, event -> changed.run());
  }

  private static Composite cell(Composite row, Desk desk, String name) {
    Composite cell = Layouts.columns(row, 2);
    cell.setLayoutData(null);
    Label label = Layouts.word(cell, desk.look(), name);
    label.setForeground(desk.look().faint());
    return cell;
  }

  String material() {
    return material.getSelectionIndex() <= 0 ? "" : material.getText();
  }

  /**
   * Returns the per cent typed; nothing for an empty field.
   *
   * @throws IllegalArgumentException if it is none, or outside its range; for people
   */
  Optional<Double> percent() {
    return percent(percent.getText());
  }

  static Optional<Double> percent(String typed) {
    String plain = typed.replace("%", "").strip();
    if (plain.isEmpty()) {
      return Optional.empty();
    }
    if (!plain.matches("\\d{1,3}(\\.\\d{1,2})?")) {
      throw new IllegalArgumentException(
          "\u201c" + typed.strip() + "\u201d is no per cent of thread; type one such as 70");
    }
    double value = Double.parseDouble(plain);
    if (!(value > 0 && value <= 100)) {
      throw new IllegalArgumentException(
          plain + " per cent of thread is outside above 0 to 100; type one such as 70");
    }
    return Optional.of(value);
  }

  boolean catalogue() {
    return catalogue.getSelection();
  }
}
