package org.fettlebench.desktop.kits.internal;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Copying;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.kits.FaultyFileException.Fault;

/** Everything that is wrong with a kit file, fault by fault, to be read and copied. */
final class FaultsList extends Composite {
  private final Desk desk;
  private final Text text;

  FaultsList(Composite parent, Desk desk) {
    super(parent, SWT.NONE);
    this.desk = desk;
    setBackground(parent.getBackground());
    setLayout(Layouts.grid(1, 0));
    text = new Text(this, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER);
    text.setFont(desk.look().text());
    text.setBackground(desk.look().sheet());
    text.setForeground(desk.look().ink());
    Layouts.fill(text);
    Layouts.button(this, desk.look(), "Cop&y all faults", this::copy);
  }

  void show(List<Fault> faults) {
    text.setText(words(faults));
  }

  /** Returns all faults as text: place, what stands there, what is wrong, the remedy. */
  static String words(List<Fault> faults) {
    StringBuilder all = new StringBuilder();
    for (Fault fault : faults) {
      all.append("Line ").append(fault.line()).append(", column ").append(fault.column());
      all.append(fault.value().isEmpty() ? "" : ": \u201c" + fault.value() + "\u201d");
      all.append("\n    ").append(sentence(fault.wrong()));
      all.append("\n    ").append(sentence(fault.remedy())).append("\n\n");
    }
    return all.toString().stripTrailing();
  }

  private static String sentence(String words) {
    String begun =
        words.isEmpty() ? "" : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    return begun.endsWith(".") || begun.endsWith("?") || begun.isEmpty() ? begun : begun + ".";
  }

  private void copy() {
    Copying.text(getDisplay(), text.getText());
    desk.say("The faults are copied.");
  }

  /** Returns what stands there. */
  String text() {
    return text.getText();
  }

  /** Returns a heading for so many faults. */
  static String heading(String file, List<Fault> faults) {
    return file + " has " + Figures.count(faults.size(), "fault", "faults");
  }
}
