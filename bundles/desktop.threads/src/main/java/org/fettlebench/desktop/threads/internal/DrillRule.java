package org.fettlebench.desktop.threads.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.threads.internal.ThreadAnswer.Tapping;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.measure.Length;
import org.fettlebench.tooling.DrillSize;

/**
 * Drills along a rule: held ones solid, others hollow, the chosen one ringed; per cent of thread
 * marked below. A click or the arrow keys choose.
 */
final class DrillRule extends Canvas {
  private static final int EDGE = 44;

  private final Look look;
  private final Consumer<DrillSize> chosen;
  private Optional<ThreadAnswer> answer = Optional.empty();

  DrillRule(Composite parent, Look look, Consumer<DrillSize> chosen) {
    super(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
    this.look = look;
    this.chosen = chosen;
    dress();
    addListener(SWT.Paint, event -> paint(event.gc));
    addListener(SWT.MouseDown, this::click);
    addListener(SWT.KeyDown, this::key);
    addListener(SWT.Traverse, DrillRule::traverse);
    addListener(SWT.FocusIn, event -> redraw());
    addListener(SWT.FocusOut, event -> redraw());
    getAccessible().addAccessibleListener(described());
  }

  private AccessibleAdapter described() {
    return new AccessibleAdapter() {
      @Override
      public void getName(AccessibleEvent event) {
        event.result =
            "Rule of drills. Left and right choose. "
                + answer.flatMap(ThreadAnswer::chosen).map(TappingWords::sentence).orElse("");
      }
    };
  }

  private static void traverse(Event event) {
    event.doit =
        event.detail == SWT.TRAVERSE_TAB_NEXT
            || event.detail == SWT.TRAVERSE_TAB_PREVIOUS
            || event.detail == SWT.TRAVERSE_ESCAPE;
  }

  void dress() {
    setBackground(look.sheet());
    redraw();
  }

  void show(Optional<ThreadAnswer> newAnswer) {
    answer = newAnswer;
    redraw();
  }

  private List<Tapping> drills() {
    return answer.map(ThreadAnswer::rule).orElse(List.of());
  }

  private RuleScale scale() {
    int edge = (int) (EDGE * look.scale());
    return new RuleScale(drills(), edge, Math.max(1, getClientArea().width - 2 * edge));
  }

  private Optional<DrillSize> chosenDrill() {
    return answer.flatMap(ThreadAnswer::chosen).map(Tapping::drill);
  }

  private void click(Event event) {
    setFocus();
    scale().at(event.x).ifPresent(tapping -> chosen.accept(tapping.drill()));
  }

  private void key(Event event) {
    int step = event.keyCode == SWT.ARROW_RIGHT ? 1 : event.keyCode == SWT.ARROW_LEFT ? -1 : 0;
    if (step != 0) {
      chosenDrill()
          .flatMap(drill -> scale().beside(drill, step))
          .ifPresent(tapping -> chosen.accept(tapping.drill()));
    }
  }

  private void paint(GC gc) {
    gc.setAntialias(SWT.ON);
    gc.setFont(look.small());
    gc.setForeground(look.ink());
    if (drills().isEmpty()) {
      gc.drawText("Drills stand here when a thread is chosen.", 12, 12, true);
      return;
    }
    new DrillRulePen(gc, look, scale(), getClientArea()).paint(answer.orElseThrow());
    if (isFocusControl()) {
      gc.setForeground(look.accent());
      gc.setLineWidth(2);
      gc.drawRectangle(1, 1, getClientArea().width - 2, getClientArea().height - 2);
    }
  }

  @Override
  public Point computeSize(int widthHint, int heightHint, boolean changed) {
    int height = heightHint == SWT.DEFAULT ? (int) (108 * look.scale()) : heightHint;
    return new Point(widthHint == SWT.DEFAULT ? 300 : widthHint, height);
  }

  /** Returns the words for a per cent of thread. */
  static String percent(double percent) {
    return Figures.show(percent, 0) + " %";
  }

  /** Returns the hole that leaves a per cent of thread. */
  static Length hole(ThreadAnswer answer, double percent) {
    return answer.thread().holeFor(percent);
  }
}
