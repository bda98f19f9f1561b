package org.fettlebench.desktop.threads.internal.folds;

import java.util.List;
import java.util.function.BiConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.threads.internal.sheet.Fold;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.identify.CrossPair;

/** The threads that could be crossed with one, each a button away from being laid over it. */
public final class NearFold {
  private static final int MOST = 6;

  private final Desk desk;
  private final Fold fold;
  private final BiConsumer<String, String> compare;
  private List<CrossPair> shown = List.of();

  /**
   * Makes the fold.
   *
   * @param compare is told screw and nut to lay over each other
   */
  public NearFold(Composite parent, Desk desk, String pageId, BiConsumer<String, String> compare) {
    this.desk = desk;
    this.compare = compare;
    fold = new Fold(parent, desk, pageId, "near", "Easily crossed", false);
    fold.whenOpened(this::fill);
  }

  /** Shows the pairs of a thread. */
  public void show(ScrewThread thread, List<CrossPair> pairs) {
    fold.summary(
        pairs.isEmpty()
            ? "with none"
            : "with "
                + String.join(
                    ", ", pairs.stream().limit(2).map(p -> p.second().designation()).toList())
                + (pairs.size() > 2 ? " ..." : ""));
    if (!pairs.equals(shown)) {
      shown = List.copyOf(pairs);
      fill();
    }
  }

  private void fill() {
    if (!fold.isOpen()) {
      return;
    }
    for (Control child : fold.body().getChildren()) {
      child.dispose();
    }
    for (CrossPair pair : shown.stream().limit(MOST).toList()) {
      Composite line = Layouts.wide(Layouts.columns(fold.body(), 2));
      Layouts.button(
          line,
          desk.look(),
          pair.second().designation(),
          () -> compare.accept(pair.first().designation(), pair.second().designation()));
      Label words = Layouts.text(line, desk.look(), pair.kind().words());
      ((GridData) words.getLayoutData()).verticalAlignment = SWT.CENTER;
    }
    if (shown.isEmpty()) {
      Layouts.text(fold.body(), desk.look(), "No thread of the series enabled comes near enough.");
    }
  }
}
