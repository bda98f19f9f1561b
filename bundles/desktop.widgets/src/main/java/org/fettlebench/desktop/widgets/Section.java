package org.fettlebench.desktop.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Look;

/** A heading with a rule under it, and a body for what belongs there. May be folded away. */
public final class Section extends Composite {
  private final Look look;
  private final Label heading;
  private final Composite body;
  private String title;

  /** Makes an open section as wide as there is room. */
  public Section(Composite parent, Look look, String title) {
    super(parent, SWT.NONE);
    this.look = look;
    this.title = title;
    var grid = Layouts.grid(1, 0);
    grid.marginTop = Layouts.GAP;
    setLayout(grid);
    setBackground(parent.getBackground());
    setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
    heading = Layouts.label(this, look.heading(), title);
    heading.setForeground(look.ink());
    Layouts.rule(this, look);
    body = new Composite(this, SWT.NONE);
    body.setLayout(Layouts.grid(1, 0));
    body.setBackground(getBackground());
    Layouts.fill(body);
  }

  /** Returns the composite that takes the content; one column unless given another layout. */
  public Composite body() {
    return body;
  }

  /** Changes the heading. */
  public void title(String newTitle) {
    title = newTitle;
    heading.setText(Layouts.escaped(title));
  }

  /** Makes the section take all room that is left, for a list inside it. */
  public Section growing() {
    Layouts.fill(this);
    return this;
  }

  /** Removes everything from the body, to fill it anew. */
  public Section clear() {
    for (Control child : body.getChildren()) {
      child.dispose();
    }
    return this;
  }

  /** Adds wrapped running text. */
  public Section text(String text) {
    Layouts.text(body, look, text);
    return this;
  }

  /** Adds a wrapped remark, small. */
  public Section remark(String text) {
    Layouts.remark(body, look, text);
    return this;
  }

  /** Adds a line of a two-column form: its name, lesser, and what it is. */
  public Section line(String name, String value) {
    Composite line = Layouts.wide(Layouts.columns(body, 2));
    Label left = Layouts.word(line, look, name);
    left.setForeground(look.faint());
    ((GridData) left.getLayoutData()).widthHint = (int) (130 * look.scale());
    ((GridData) left.getLayoutData()).verticalAlignment = SWT.BEGINNING;
    Layouts.text(line, look, value);
    return this;
  }

  /** Adds a point of a list: the shape of a verdict, then the wrapped sentence. */
  public Section point(VerdictMark mark, String sentence) {
    Composite line = Layouts.wide(Layouts.columns(body, 2));
    MarkOnly shape = new MarkOnly(line, look, mark);
    shape.setLayoutData(new GridData(SWT.LEFT, SWT.BEGINNING, false, false));
    Layouts.text(line, look, sentence);
    return this;
  }

  /** Makes the section foldable by a click on its heading, Space or Enter. */
  public Section foldable(boolean open) {
    new Fold(heading, look, body, open, this::fold);
    return this;
  }

  private void fold(boolean open) {
    ((GridData) body.getLayoutData()).exclude = !open;
    body.setVisible(open);
    requestLayout();
    ScrollPane.around(this).ifPresent(ScrollPane::fit);
  }
}
