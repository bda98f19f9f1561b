package org.fettlebench.desktop.stock.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.club.Goods;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Layouts;

/** Shows all kinds of thing or one. */
final class KindSwitch {
  private static final List<String> WORDS =
      List.of("all", "fasteners", "drills", "taps", "sundries");

  private final Composite row;

  KindSwitch(Composite parent, Look look, Consumer<Optional<Goods.Kind>> chosen) {
    row = Layouts.columns(parent, WORDS.size());
    for (int i = 0; i < WORDS.size(); i++) {
      Button button = new Button(row, SWT.RADIO);
      Optional<Goods.Kind> kind =
          i == 0 ? Optional.empty() : Optional.of(Goods.Kind.values()[i - 1]);
      button.setText(WORDS.get(i));
      button.setFont(look.text());
      button.setForeground(look.ink());
      button.setBackground(row.getBackground());
      button.setSelection(i == 0);
      button.addListener(
          SWT.Selection,
          event -> {
            if (button.getSelection()) {
              chosen.accept(kind);
            }
          });
    }
  }

  /** Shows all kinds again. */
  void all() {
    for (int i = 0; i < WORDS.size(); i++) {
      ((Button) row.getChildren()[i]).setSelection(i == 0);
    }
  }
}
