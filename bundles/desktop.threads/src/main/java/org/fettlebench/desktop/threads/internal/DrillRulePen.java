package org.fettlebench.desktop.threads.internal;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.threads.internal.ThreadAnswer.Tapping;
import org.fettlebench.measure.Length;
import org.fettlebench.tooling.DrillSize;

/** Paints the rule of drills. */
final class DrillRulePen {
  private final GC gc;
  private final Look look;
  private final RuleScale scale;
  private final Rectangle area;
  private final int line;
  private final int dot;

  DrillRulePen(GC gc, Look look, RuleScale scale, Rectangle area) {
    this.gc = gc;
    this.look = look;
    this.scale = scale;
    this.area = area;
    gc.setFont(look.small());
    int text = gc.getFontMetrics().getHeight();
    // Below the rule stand two rows of words, above it the levels of names.
    this.line = area.height - 2 * text - 14;
    this.dot = (int) Math.round(4 * look.scale());
  }

  void paint(ThreadAnswer answer) {
    Optional<DrillSize> chosen = answer.chosen().map(Tapping::drill);
    limits(answer);
    gc.setForeground(look.ink());
    gc.setLineWidth(1);
    gc.drawLine(area.x + 8, line, area.x + area.width - 8, line);
    percents(answer);
    wanted(answer);
    for (RuleScale.Name name : scale.names(chosen, levels(), this::width)) {
      name(name, chosen.equals(Optional.of(name.drill().drill())));
    }
    for (Tapping drill : answer.rule()) {
      mark(drill, chosen.equals(Optional.of(drill.drill())));
    }
  }

  /** Returns how many rows of names find room above the rule. */
  private int levels() {
    int text = gc.getFontMetrics().getHeight() + 4;
    return Math.max(1, Math.min(RuleScale.LEVELS, (line - 3 * dot) / text));
  }

  private int width(Tapping drill) {
    gc.setFont(look.strong());
    return gc.textExtent(drill.drill().name()).x;
  }

  /** What the standard allows of the hole, as a pale band with its ends marked. */
  private void limits(ThreadAnswer answer) {
    answer
        .limits()
        .ifPresent(
            allowed -> {
              int from = Math.max(area.x + 8, scale.x(allowed.least()));
              int to = Math.min(area.x + area.width - 8, scale.x(allowed.most()));
              if (to > from) {
                gc.setBackground(look.rule());
                gc.fillRectangle(from, line + 2, to - from, 5);
              }
            });
  }

  private void percents(ThreadAnswer answer) {
    gc.setFont(look.small());
    int last = Integer.MAX_VALUE;
    for (int percent = 10; percent <= 100; percent += 10) {
      Length hole = DrillRule.hole(answer, percent);
      if (scale.holds(hole)) {
        int x = scale.x(hole);
        String words = DrillRule.percent(percent);
        Point size = gc.textExtent(words);
        gc.setForeground(look.faint());
        gc.drawLine(x, line, x, line + 8);
        if (x + size.x / 2 + 4 < last) {
          gc.drawText(words, x - size.x / 2, line + 9, true);
          last = x - size.x / 2;
        }
      }
    }
  }

  private void wanted(ThreadAnswer answer) {
    int x = scale.x(DrillRule.hole(answer, answer.wanted()));
    int low = line + 11 + gc.getFontMetrics().getHeight();
    gc.setForeground(look.accent());
    gc.setBackground(look.accent());
    gc.setLineWidth(2);
    gc.drawLine(x, line, x, low - 2);
    gc.fillPolygon(new int[] {x, line + 1, x - dot, line + 3 * dot, x + dot, line + 3 * dot});
    String words = "wanted " + TappingWords.percent(answer.wanted());
    int left = x - gc.textExtent(words).x / 2;
    gc.drawText(words, Math.max(4, left), low - 2, true);
    gc.setForeground(look.faint());
    String key = "\u25cf held   \u25cb not held";
    gc.drawText(key, area.width - gc.textExtent(key).x - 8, low - 2, true);
    gc.setLineWidth(1);
  }

  private void name(RuleScale.Name name, boolean chosen) {
    boolean held = name.drill().held();
    gc.setBackground(look.sheet());
    gc.setFont(chosen ? look.strong() : look.small());
    gc.setForeground(chosen ? look.accent() : held ? look.ink() : look.faint());
    Point size = gc.textExtent(name.drill().drill().name());
    int bottom = line - 3 * dot - name.level() * (size.y + 4);
    gc.drawLine(name.middle(), line - dot, name.middle(), bottom);
    gc.drawText(name.drill().drill().name(), name.middle() - size.x / 2, bottom - size.y, false);
  }

  private void mark(Tapping drill, boolean chosen) {
    int x = scale.x(drill.drill().diameter());
    gc.setForeground(look.ink());
    gc.setLineWidth(Math.max(1, dot / 3));
    gc.setBackground(drill.held() ? look.ink() : look.sheet());
    gc.fillOval(x - dot, line - dot, 2 * dot, 2 * dot);
    gc.drawOval(x - dot, line - dot, 2 * dot, 2 * dot);
    if (chosen) {
      gc.setForeground(look.accent());
      gc.setLineWidth(Math.max(2, dot / 2));
      gc.setLineStyle(SWT.LINE_SOLID);
      gc.drawOval(x - 2 * dot, line - 2 * dot, 4 * dot, 4 * dot);
    }
    gc.setLineWidth(1);
  }
}
