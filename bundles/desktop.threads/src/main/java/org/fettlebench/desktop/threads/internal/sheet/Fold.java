package org.fettlebench.desktop.threads.internal.sheet;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;

/**
 * A head with the answer in a few words, and what stands behind it below, folded or open as a
 * person left it. Space, Enter or a click turns it.
 */
public final class Fold extends Composite {
  private static final String OPEN = "open";

  private final Desk desk;
  private final String pageId;
  private final String key;
  private final FoldHead head;
  private final Composite body;
  private boolean open;
  private Runnable opened = () -> {};

  /**
   * Makes the fold.
   *
   * @param pageId page whose remembered texts keep it
   * @param key name of the fold on the page, that never changes
   * @param usual whether it is open until a person folds it
   */
  public Fold(Composite parent, Desk desk, String pageId, String key, String title, boolean usual) {
    super(parent, SWT.NONE);
    this.desk = desk;
    this.pageId = pageId;
    this.key = "fold." + key;
    GridLayout grid = Layouts.grid(1, 0);
    grid.verticalSpacing = 4;
    setLayout(grid);
    setBackground(parent.getBackground());
    setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
    head = new FoldHead(this, desk.look(), title, this::toggle);
    body = Layouts.wide(Layouts.columns(this, 1));
    ((GridLayout) body.getLayout()).verticalSpacing = 4;
    ((GridLayout) body.getLayout()).marginBottom = 8;
    show(desk.remembered(pageId, this.key, usual ? OPEN : "folded").equals(OPEN));
  }

  /** Returns the composite that takes the content, one column. */
  public Composite body() {
    return body;
  }

  /** Returns whether the content is to be seen. */
  public boolean isOpen() {
    return open;
  }

  /** Says the answer in a few words, to be read while folded too. */
  public void summary(String words) {
    head.summary(words);
  }

  /** Returns the answer in a few words. */
  public String summary() {
    return head.summary();
  }

  /** Is called when a person opens it, to fill it. */
  public Fold whenOpened(Runnable listener) {
    opened = listener;
    return this;
  }

  /** Opens what is folded and the other way about, and remembers it. */
  public void toggle() {
    show(!open);
    desk.remember(pageId, key, open ? OPEN : "folded");
    if (open) {
      opened.run();
    }
    refit();
  }

  /** Measures again what stands around it, after its content changed its height. */
  public void refit() {
    ScrollPane.around(this).ifPresent(ScrollPane::fit);
  }

  private void show(boolean now) {
    open = now;
    head.open(now);
    body.setVisible(now);
    ((GridData) body.getLayoutData()).exclude = !now;
  }

  /** Returns a wrapped label for sources and standing, empty and taking no room. */
  public Label remarks() {
    Label label = Layouts.remark(body, desk.look(), "");
    ((GridData) label.getLayoutData()).exclude = true;
    label.setVisible(false);
    return label;
  }

  /** Puts lines into a label; it takes no room while there are none. */
  public static void tell(Label label, String... lines) {
    String text = Layouts.escaped(String.join("\n", lines));
    if (!text.equals(label.getText())) {
      label.setText(text);
      label.setVisible(!text.isEmpty());
      ((GridData) label.getLayoutData()).exclude = text.isEmpty();
      label.requestLayout();
    }
  }
}
