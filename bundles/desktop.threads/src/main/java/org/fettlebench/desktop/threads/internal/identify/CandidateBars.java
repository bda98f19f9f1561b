package org.fettlebench.desktop.threads.internal.identify;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.threads.internal.sheet.Keys;
import org.fettlebench.desktop.widgets.Copying;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.threads.identify.Candidate;

/** Ranked names with bars of their likelihood; a click or the arrow keys choose one. */
final class CandidateBars extends Canvas {
  private static final int PAD = 6;
  private static final int FEW = 5;
  private static final double LARGE = 1.3;

  private final Desk desk;
  private final Consumer<Candidate> chosen;
  private List<Candidate> candidates = List.of();
  private int at;

  CandidateBars(Composite parent, Desk desk, Consumer<Candidate> chosen) {
    super(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
    this.desk = desk;
    this.chosen = chosen;
    setBackground(desk.look().sheet());
    setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, false));
    addListener(SWT.Paint, event -> paint(event.gc));
    addListener(SWT.MouseDown, this::click);
    addListener(SWT.KeyDown, this::key);
    addListener(SWT.Traverse, event -> event.doit = Keys.leaves(event.detail));
    addListener(SWT.FocusIn, event -> redraw());
    addListener(SWT.FocusOut, event -> redraw());
    getAccessible().addAccessibleListener(described());
  }

  private AccessibleAdapter described() {
    return new AccessibleAdapter() {
      @Override
      public void getName(AccessibleEvent event) {
        event.result = "Likely threads. Up and down choose.\n" + asText();
      }
    };
  }

  void show(List<Candidate> newCandidates) {
    candidates = newCandidates.stream().limit(rows()).toList();
    at = 0;
    setBackground(desk.look().sheet());
    redraw();
  }

  Optional<Candidate> chosen() {
    return at < candidates.size() ? Optional.of(candidates.get(at)) : Optional.empty();
  }

  private void choose(int row) {
    if (row >= 0 && row < candidates.size() && row != at) {
      at = row;
      redraw();
      chosen.accept(candidates.get(row));
    }
  }

  private void click(Event event) {
    setFocus();
    choose((event.y - height()) / height());
  }

  private void key(Event event) {
    if (event.keyCode == SWT.ARROW_DOWN) {
      choose(at + 1);
    } else if (event.keyCode == SWT.ARROW_UP) {
      choose(at - 1);
    } else if (event.keyCode == 'c' && (event.stateMask & SWT.MOD1) != 0) {
      Copying.text(getDisplay(), asText());
      desk.say(Figures.count(candidates.size(), "row", "rows") + " copied, with the heads.");
    }
  }

  /** Returns all rows with their heads, tab between cells. */
  String asText() {
    String heads = String.join("\t", "thread", "likelihood, %", off("diameter"), off("pitch"));
    return candidates.stream()
        .map(
            c ->
                String.join(
                    "\t",
                    c.thread().designation(),
                    Figures.show(100 * c.share(), 1),
                    off(c.diameterOff()),
                    off(c.pitchOff())))
        .collect(Collectors.joining("\n", heads + "\n", "\n"));
  }

  private String off(String what) {
    return what + " off, " + desk.unit().symbol();
  }

  private String off(Optional<Length> off) {
    int decimals = desk.unit() == org.fettlebench.measure.LengthUnit.INCH ? 4 : 3;
    return off.map(l -> LengthFormat.number(l, desk.unit(), decimals)).orElse("\u2013");
  }

  private int height() {
    GC gc = new GC(this);
    gc.setFont(desk.look().text());
    int height = gc.getFontMetrics().getHeight() + 2 * PAD;
    gc.dispose();
    return height;
  }

  private void paint(GC gc) {
    Look look = desk.look();
    Rectangle area = getClientArea();
    gc.setFont(look.text());
    if (candidates.isEmpty()) {
      gc.setForeground(look.faint());
      gc.drawText("Type a diameter and a pitch: the threads it may be stand here.", 12, 12, true);
      return;
    }
    int height = height();
    int off = gc.textExtent("diameter off, mm").x + 16;
    int name = 12 + gc.textExtent("1 1/8 x 26 BSB xx").x;
    int percent = gc.textExtent("above 99 %").x + 16;
    boolean roomy = area.width > name + percent + 2 * off + 120;
    int bars = area.width - name - percent - (roomy ? 2 * off : 0) - 12;
    gc.setForeground(look.faint());
    gc.drawText("likelihood", name, PAD, true);
    if (roomy) {
      right(gc, off("diameter"), area.width - off - 12, PAD);
      right(gc, off("pitch"), area.width - 12, PAD);
    }
    for (int i = 0; i < candidates.size(); i++) {
      Candidate candidate = candidates.get(i);
      int y = (i + 1) * height;
      if (i == at) {
        gc.setBackground(look.rule());
        gc.fillRectangle(0, y, area.width, height);
      }
      gc.setFont(i == at ? look.strong() : look.text());
      gc.setForeground(candidate.agrees() ? look.ink() : look.faint());
      gc.drawText(candidate.thread().designation(), 12, y + PAD, true);
      gc.setFont(look.text());
      int length = Math.max(1, (int) Math.round(candidate.share() * bars));
      gc.setBackground(candidate.agrees() ? look.accent() : look.faint());
      gc.fillRectangle(name, y + PAD + 2, length, height - 2 * PAD - 3);
      gc.drawText(
          candidate.agrees() ? Identified.percent(candidate.share()) : "does not agree",
          name + length + 8,
          y + PAD,
          true);
      if (roomy) {
        right(gc, off(candidate.diameterOff()), area.width - off - 12, y + PAD);
        right(gc, off(candidate.pitchOff()), area.width - 12, y + PAD);
      }
    }
    if (isFocusControl()) {
      gc.setForeground(look.accent());
      gc.drawRectangle(0, 0, area.width - 1, area.height - 1);
    }
  }

  private static void right(GC gc, String words, int x, int y) {
    gc.drawText(words, x - gc.textExtent(words).x, y, true);
  }

  @Override
  public Point computeSize(int widthHint, int heightHint, boolean changed) {
    int lines = rows() + 1;
    return new Point(widthHint == SWT.DEFAULT ? 400 : widthHint, lines * height() + 4);
  }

  /** Fewer rows in large letters, so that the drawing below keeps its room. */
  private int rows() {
    return desk.look().scale() > LARGE ? FEW : Identified.MOST;
  }
}
