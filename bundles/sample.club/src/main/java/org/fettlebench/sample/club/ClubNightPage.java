package org.fettlebench.sample.club;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.Page;
import org.osgi.service.component.annotations.Component;

/** The sample club's own page: when it meets, and what is to be done before. */
@Component
public final class ClubNightPage implements Page {
  private static final List<String> BEFORE =
      List.of("Stove lit", "Surface plate uncovered", "Loans looked through", "Kettle on");

  private Composite page;

  @Override
  public String id() {
    return "sample.club.night";
  }

  @Override
  public String title() {
    return "Club night";
  }

  @Override
  public int order() {
    return 60;
  }

  @Override
  public Control create(Composite parent, Desk desk) {
    Look look = desk.look();
    page = new Composite(parent, SWT.NONE);
    page.setBackground(look.ground());
    GridLayout layout = new GridLayout();
    layout.marginWidth = layout.marginHeight = (int) (32 * look.scale());
    layout.verticalSpacing = (int) (10 * look.scale());
    page.setLayout(layout);
    words("First Thursday, half past seven", look.answer(), look.ink());
    words(
        "Bring what you are stuck with; take the drill set back with you.",
        look.text(),
        look.faint());
    words("Before the others come", look.heading(), look.ink());
    BEFORE.forEach(task -> tick(task, desk));
    return page;
  }

  private void words(String text, Font font, Color colour) {
    Label label = new Label(page, SWT.WRAP);
    label.setText(text);
    label.setFont(font);
    label.setForeground(colour);
    label.setBackground(page.getBackground());
  }

  private void tick(String task, Desk desk) {
    Button box = new Button(page, SWT.CHECK);
    box.setText(task);
    box.setFont(desk.look().text());
    box.setForeground(desk.look().ink());
    box.setBackground(page.getBackground());
    box.setSelection(desk.remembered(id(), task, "no").equals("yes"));
    box.addListener(
        SWT.Selection,
        event -> {
          desk.remember(id(), task, box.getSelection() ? "yes" : "no");
          desk.say(task + (box.getSelection() ? ": done" : ": still to do"));
        });
  }

  @Override
  public void focus() {
    page.setFocus();
  }
}
