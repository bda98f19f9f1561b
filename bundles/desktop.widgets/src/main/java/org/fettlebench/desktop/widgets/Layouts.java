package org.fettlebench.desktop.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Look;

/** Places controls with the same gaps on every page, and makes the plain ones. */
public final class Layouts {
  /** Pixels between things that belong together. */
  public static final int GAP = 8;

  /** Pixels around a page and between its parts. */
  public static final int MARGIN = 16;

  private Layouts() {}

  /** Returns a composite with its children in columns, no margin, the parent's ground. */
  public static Composite columns(Composite parent, int count) {
    Composite made = new Composite(parent, SWT.NONE);
    made.setLayout(grid(count, 0));
    made.setBackground(parent.getBackground());
    return made;
  }

  /**
   * Returns a row that goes on below when there is no more room; its children need no layout data.
   */
  public static Composite flow(Composite parent) {
    Composite made = new Composite(parent, SWT.NONE);
    RowLayout row = new RowLayout(SWT.HORIZONTAL);
    row.wrap = true;
    row.center = true;
    row.marginLeft = row.marginRight = row.marginTop = row.marginBottom = 0;
    row.spacing = GAP;
    made.setLayout(row);
    made.setBackground(parent.getBackground());
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    // A small hint makes it wrap to the room it gets instead of asking for one long row.
    data.widthHint = 40;
    made.setLayoutData(data);
    return made;
  }

  /** Returns a composite for a whole page: one column, the usual margin. */
  public static Composite page(Composite parent, Look look) {
    Composite made = new Composite(parent, SWT.NONE);
    made.setLayout(grid(1, MARGIN));
    made.setBackground(look.ground());
    return made;
  }

  /** Returns a composite of one column with the usual margin on a ground of its own. */
  public static Composite padded(Composite parent, Color ground) {
    Composite made = new Composite(parent, SWT.NONE);
    made.setLayout(grid(1, MARGIN));
    made.setBackground(ground);
    return made;
  }

  /** Returns a grid with the usual gaps. */
  public static GridLayout grid(int columns, int margin) {
    GridLayout grid = new GridLayout(columns, false);
    grid.marginWidth = margin;
    grid.marginHeight = margin;
    grid.horizontalSpacing = GAP;
    grid.verticalSpacing = GAP;
    return grid;
  }

  /** Makes a control of a grid take all room that is left, both ways. */
  public static <C extends Control> C fill(C control) {
    control.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    return control;
  }

  /** Makes a control of a grid as wide as there is room. */
  public static <C extends Control> C wide(C control) {
    control.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    return control;
  }

  /** Gives a control of a grid a width in average characters of its font. */
  public static <C extends Control> C characters(C control, int characters) {
    org.eclipse.swt.graphics.GC gc = new org.eclipse.swt.graphics.GC(control);
    gc.setFont(control.getFont());
    double width = gc.getFontMetrics().getAverageCharacterWidth() * characters;
    gc.dispose();
    GridData data = new GridData(SWT.LEFT, SWT.CENTER, false, false);
    data.widthHint = (int) Math.round(width);
    control.setLayoutData(data);
    return control;
  }

  /** Returns a label on the parent's ground that wraps and takes the width there is. */
  public static Label label(Composite parent, Font font, String text) {
    Label label = new Label(parent, SWT.WRAP);
    label.setFont(font);
    label.setText(escaped(text));
    label.setBackground(parent.getBackground());
    // A small hint makes the label wrap to the room it gets instead of asking for one long line.
    GridData data = new GridData(SWT.FILL, SWT.BEGINNING, true, false);
    data.widthHint = 40;
    label.setLayoutData(data);
    return label;
  }

  /** Returns a label in ink that keeps its natural width. */
  public static Label word(Composite parent, Look look, String text) {
    Label label = label(parent, look.text(), text);
    label.setForeground(look.ink());
    label.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
    return label;
  }

  /** Returns wrapped running text in ink. */
  public static Label text(Composite parent, Look look, String text) {
    Label label = label(parent, look.text(), text);
    label.setForeground(look.ink());
    return label;
  }

  /** Returns a small wrapped remark: a source, a standing. */
  public static Label remark(Composite parent, Look look, String text) {
    Label label = label(parent, look.small(), text);
    label.setForeground(look.faint());
    return label;
  }

  /** Returns the page's answer: the largest thing on it. */
  public static Label answer(Composite parent, Look look, String text) {
    Label label = label(parent, look.answer(), text);
    label.setForeground(look.ink());
    return label;
  }

  /** Returns a thin rule across the room there is. */
  public static Control rule(Composite parent, Look look) {
    Composite rule = new Composite(parent, SWT.NO_FOCUS);
    rule.setBackground(look.rule());
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    data.heightHint = 1;
    rule.setLayoutData(data);
    return rule;
  }

  /** Returns a push button; an ampersand in its text marks the letter for Alt. */
  public static Button button(Composite parent, Look look, String text, Runnable pressed) {
    Button button = new PadButton(parent);
    button.setFont(look.text());
    button.setBackground(look.sheet());
    button.setForeground(look.ink());
    button.setText(text);
    button.addListener(SWT.Selection, event -> pressed.run());
    button.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
    return button;
  }

  /** Makes a control of a grid take room, or none. */
  public static void present(Control control, boolean there) {
    if (control.getLayoutData() instanceof GridData data && data.exclude == there) {
      data.exclude = !there;
      control.setVisible(there);
      control.requestLayout();
    }
  }

  /** Sets the words of a label of a grid; it takes no room while there are none. */
  public static void say(Label label, String words) {
    String escaped = escaped(words);
    if (!label.getText().equals(escaped)) {
      label.setText(escaped);
      label.requestLayout();
    }
    present(label, !words.isBlank());
  }

  /** Returns text for a label in which an ampersand is shown as such. */
  public static String escaped(String text) {
    return text.replace("&", "&&");
  }
}
