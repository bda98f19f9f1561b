package org.fettlebench.desktop.widgets;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.desktop.Look;

/** Scrolls its body up and down; the body is as wide as there is room, so that text wraps. */
public final class ScrollPane extends ScrolledComposite {
  private final Composite body;

  /** Makes the pane with an empty body of one column. */
  public ScrollPane(Composite parent, Look look) {
    this(parent, look, SWT.V_SCROLL);
  }

  /**
   * Returns a pane that also scrolls from side to side where its body, which does not wrap, is
   * wider than the room.
   */
  public static ScrollPane bothWays(Composite parent, Look look) {
    return new ScrollPane(parent, look, SWT.V_SCROLL | SWT.H_SCROLL);
  }

  private ScrollPane(Composite parent, Look look, int style) {
    super(parent, style);
    setBackground(parent.getBackground());
    setExpandHorizontal(true);
    setExpandVertical(true);
    setShowFocusedControl(true);
    body = new Composite(this, SWT.NONE);
    body.setLayout(Layouts.grid(1, 0));
    body.setBackground(getBackground());
    setContent(body);
    getVerticalBar().setIncrement((int) (24 * look.scale()));
    addListener(SWT.Resize, event -> fit());
    addListener(SWT.Resize, event -> getVerticalBar().setPageIncrement(getClientArea().height));
  }

  /** Returns the composite that takes the content. */
  public Composite body() {
    return body;
  }

  /** Measures the body again, after something in it changed. */
  public void fit() {
    int width = getClientArea().width;
    if (width > 0 && getHorizontalBar() != null) {
      setMinSize(body.computeSize(SWT.DEFAULT, SWT.DEFAULT));
      // While the body has no room yet, its controls would be hidden and lose the keyboard.
      if (body.getSize().x > 0) {
        body.layout(true, true);
      }
    } else if (width > 0) {
      setMinHeight(body.computeSize(width, SWT.DEFAULT).y);
      // While the body has no room yet, its controls would be hidden and lose the keyboard.
      if (body.getSize().x > 0) {
        body.layout(true, true);
      }
    }
  }

  /** Returns the pane in which a control stands, if it stands in one. */
  public static Optional<ScrollPane> around(Control control) {
    for (Composite up = control.getParent(); up != null; up = up.getParent()) {
      if (up instanceof ScrollPane pane) {
        return Optional.of(pane);
      }
    }
    return Optional.empty();
  }
}
