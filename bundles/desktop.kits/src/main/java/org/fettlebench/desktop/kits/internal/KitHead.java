package org.fettlebench.desktop.kits.internal;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.VerdictBadge;

/** Which kit, what can be done with it, and the answer: can it be built? */
final class KitHead extends Composite {
  private final Combo kits;
  private final Button shorts;
  private final VerdictBadge badge;
  private final Label summary;

  /** What the head's buttons do. */
  interface Deeds {
    void choose(String kit);

    void open();

    void check();

    void shortList(boolean shown);

    void card();

    void report();

    void seat();

    void remove();
  }

  KitHead(Composite parent, Desk desk, Deeds deeds) {
    super(parent, SWT.NONE);
    Look look = desk.look();
    setBackground(parent.getBackground());
    setLayout(Layouts.grid(1, 0));
    Layouts.wide(this);
    Composite bar = new Composite(this, SWT.NONE);
    bar.setBackground(getBackground());
    RowLayout row = new RowLayout(SWT.HORIZONTAL);
    row.center = true;
    row.marginLeft = 0;
    row.marginTop = 0;
    row.marginBottom = 0;
    row.spacing = Layouts.GAP;
    bar.setLayout(row);
    Layouts.wide(bar);
    kits = new Combo(bar, SWT.READ_ONLY | SWT.DROP_DOWN);
    kits.setFont(look.strong());
    kits.setToolTipText("The kit that is shown");
    kits.addListener(SWT.Selection, event -> deeds.choose(kits.getText()));
    button(bar, look, "&Open kit file \u2026", "Bring in a kit file", deeds::open);
    button(bar, look, "&Check again", "F5: against the stock as it is now", deeds::check);
    shorts = new Button(bar, SWT.TOGGLE);
    shorts.setFont(look.text());
    shorts.setBackground(look.sheet());
    shorts.setForeground(look.ink());
    shorts.setText("&Short list");
    shorts.setToolTipText("What to buy or find before beginning");
    // A button that stays down has less room around its words than the others.
    shorts.setLayoutData(new RowData(shorts.computeSize(-1, -1).x + 3 * Layouts.GAP, -1));
    shorts.addListener(SWT.Selection, event -> deeds.shortList(shorts.getSelection()));
    button(bar, look, "&Bench card \u2026", "Ctrl+P: this joint as PDF", deeds::card);
    button(bar, look, "Seat", "Open this joint in Seat and hole, to change and try", deeds::seat);
    button(bar, look, "Re&port \u2026", "The whole kit as PDF", deeds::report);
    button(bar, look, "&Remove", "Take this kit off the shelf; can be undone", deeds::remove);
    Composite answer = Layouts.wide(Layouts.columns(this, 2));
    badge = new VerdictBadge(answer, look).large();
    badge.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
    ((GridLayout) answer.getLayout()).horizontalSpacing = 2 * Layouts.GAP;
    summary = Layouts.text(answer, look, "");
    ((GridData) summary.getLayoutData()).verticalAlignment = SWT.CENTER;
  }

  private static void button(Composite bar, Look look, String text, String hint, Runnable pressed) {
    Button button = Layouts.button(bar, look, text, pressed);
    button.setLayoutData(null);
    button.setToolTipText(hint);
  }

  /** Shows which kits there are and which one is shown. */
  void kits(List<String> names, String shown) {
    kits.setItems(names.toArray(String[]::new));
    kits.setText(shown);
    kits.requestLayout();
  }

  /** Shows the answer. */
  void answer(KitAnswer answer, String sentence) {
    badge.show(answer.mark(), answer.word());
    summary.setText(Layouts.escaped(sentence));
    badge.requestLayout();
    summary.requestLayout();
  }

  /** Marks which of the two views is shown. */
  void shortListShown(boolean shown) {
    shorts.setSelection(shown);
  }

  /** Returns the sentence that sums the kit up, as shown. */
  String summary() {
    return summary.getText();
  }
}
