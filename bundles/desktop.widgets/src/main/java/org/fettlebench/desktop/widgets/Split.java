package org.fettlebench.desktop.widgets;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.desktop.Desk;

/** Parts beside or above each other, whose shares a person may drag and which are remembered. */
public final class Split {
  private final SashForm form;
  private final Desk desk;
  private final String pageId;
  private final String key;

  /**
   * Makes the split; add the parts to {@link #form} in order, then call {@link #share}.
   *
   * @param direction {@code SWT.HORIZONTAL} for parts beside each other, else {@code SWT.VERTICAL}
   * @param key name of the split on the page, that never changes
   */
  public Split(Composite parent, Desk desk, int direction, String pageId, String key) {
    this.desk = desk;
    this.pageId = pageId;
    this.key = key;
    form = new SashForm(parent, direction | SWT.SMOOTH);
    form.setSashWidth(Layouts.GAP);
    form.setBackground(desk.look().ground());
    Layouts.fill(form);
  }

  /** Returns the control that takes the parts. */
  public SashForm form() {
    return form;
  }

  /** Shares the room out as remembered, else by these weights; one for each part. */
  public Split share(int... weights) {
    form.setWeights(remembered(weights));
    for (Control part : form.getChildren()) {
      part.addListener(SWT.Resize, event -> keep());
    }
    return this;
  }

  private int[] remembered(int[] usual) {
    String text = desk.remembered(pageId, key, "");
    boolean fits = text.matches("\\d+( \\d+)*") && text.split(" ").length == usual.length;
    return fits ? Arrays.stream(text.split(" ")).mapToInt(Integer::parseInt).toArray() : usual;
  }

  private void keep() {
    if (form.getMaximizedControl() == null) {
      String text =
          Arrays.stream(form.getWeights())
              .mapToObj(String::valueOf)
              .collect(Collectors.joining(" "));
      desk.remember(pageId, key, text);
    }
  }
}
