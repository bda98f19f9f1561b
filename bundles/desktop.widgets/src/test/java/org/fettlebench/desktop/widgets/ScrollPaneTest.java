package org.fettlebench.desktop.widgets;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.widgets.trial.Windowed;
import org.junit.jupiter.api.Test;

class ScrollPaneTest {
  /** As a page does that is made when it is first wanted, in a window that stands already. */
  @Test
  void aFieldThatHasTheKeyboardKeepsItWhileThePaneFindsItsSize() {
    Windowed.run(
        "scroll-pane-focus",
        desk -> {
          Composite area = new Composite(desk.shell(), SWT.NONE);
          StackLayout stack = new StackLayout();
          area.setLayout(stack);
          desk.open(400, 300);
          Composite page = Layouts.columns(area, 1);
          ScrollPane pane = Layouts.fill(new ScrollPane(page, desk.look()));
          Text field = Layouts.wide(new Text(pane.body(), SWT.BORDER));
          for (int i = 0; i < 40; i++) {
            Layouts.text(pane.body(), desk.look(), "more than there is room for");
          }
          stack.topControl = page;
          field.setFocus();
          area.layout(true, true);
          desk.settle();
          assertTrue(field.isFocusControl());
        });
  }
}
