package org.fettlebench.desktop.stock.internal;

import java.time.LocalDate;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;

/** Who is at the keyboard, remembered for the evening: until the day ends. */
final class MemberField {
  private static final String NAME = "member";
  private static final String DAY = "member-day";

  private final Combo field;
  private List<String> known = List.of();

  MemberField(Composite parent, Desk desk, String pageId, LocalDate today) {
    Composite row = Layouts.columns(parent, 2);
    Layouts.word(row, desk.look(), "Member").setForeground(desk.look().faint());
    field = new Combo(row, SWT.DROP_DOWN);
    field.setFont(desk.look().text());
    field.setBackground(desk.look().sheet());
    field.setForeground(desk.look().ink());
    field.setToolTipText("Who takes, counts and receives: remembered for the evening");
    Layouts.characters(field, 16);
    if (desk.remembered(pageId, DAY, "").equals(today.toString())) {
      field.setText(desk.remembered(pageId, NAME, ""));
    }
    field.addListener(
        SWT.Modify,
        event -> {
          desk.remember(pageId, NAME, field.getText());
          desk.remember(pageId, DAY, today.toString());
        });
    Completion.on(field, () -> known);
  }

  String name() {
    return field.getText().strip();
  }

  /** Offers the members seen so far; what is typed stays. */
  void offer(List<String> members) {
    if (!members.equals(known)) {
      known = members;
      String typed = field.getText();
      field.setItems(members.toArray(String[]::new));
      field.setText(typed);
    }
  }
}
