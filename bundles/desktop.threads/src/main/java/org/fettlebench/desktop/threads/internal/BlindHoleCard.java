package org.fettlebench.desktop.threads.internal;

import java.util.Locale;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.DrawingCanvas;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.LengthField;
import org.fettlebench.desktop.widgets.Section;
import org.fettlebench.desktop.widgets.VerdictMark;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.tooling.BlindHole;
import org.fettlebench.tooling.TapLead;

/** Asks for a blind hole and shows its depths, to scale. */
final class BlindHoleCard {
  private final Desk desk;
  private final LengthField depth;
  private final LengthField metal;
  private final Combo lead;
  private final Section words;
  private final DrawingCanvas canvas;

  BlindHoleCard(Composite parent, Desk desk, Runnable asked) {
    this.desk = desk;
    Section section = new Section(parent, desk.look(), "Blind hole");
    Composite line = Layouts.wide(Layouts.columns(section.body(), 2));
    depth = field(line, "full thread", asked);
    metal = field(line, "metal", asked);
    name(line, "last tap");
    lead = new Combo(line, SWT.DROP_DOWN | SWT.READ_ONLY);
    lead.setFont(desk.look().text());
    for (TapLead each : TapLead.values()) {
      lead.add(each.name().toLowerCase(Locale.ROOT));
    }
    lead.select(TapLead.BOTTOMING.ordinal());
    lead.addListener(SWT.Selection, event -> asked.run());
    canvas = new DrawingCanvas(section.body(), desk);
    GridData size = new GridData(SWT.FILL, SWT.CENTER, true, false);
    size.heightHint = (int) (220 * desk.look().scale());
    size.exclude = true;
    canvas.setLayoutData(size);
    canvas.setVisible(false);
    words = new Section(section.body(), desk.look(), "Depths from the face");
  }

  private LengthField field(Composite line, String name, Runnable asked) {
    name(line, name);
    LengthField field = new LengthField(line, desk).onChange(length -> asked.run());
    field.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    return field;
  }

  private void name(Composite line, String name) {
    Label label = Layouts.word(line, desk.look(), name);
    label.setForeground(desk.look().faint());
    ((GridData) label.getLayoutData()).widthHint = (int) (80 * desk.look().scale());
  }

  Optional<ThreadQuestion.Blind> asked() {
    Optional<Length> deep = depth.value().filter(Length::isPositive);
    Optional<Length> thick = metal.value().filter(Length::isPositive);
    TapLead last = TapLead.values()[Math.max(0, lead.getSelectionIndex())];
    return deep.flatMap(d -> thick.map(m -> new ThreadQuestion.Blind(d, m, last)));
  }

  void show(ThreadAnswer answer) {
    words.clear();
    boolean there = answer.blind().isPresent();
    words.setVisible(there);
    ((GridData) words.getLayoutData()).exclude = !there;
    canvas.setVisible(there);
    ((GridData) canvas.getLayoutData()).exclude = !there;
    answer
        .blind()
        .ifPresentOrElse(
            blind -> {
              canvas.show(BlindHoleDrawing.of(blind.asked(), blind.hole(), desk.unit()));
              say(blind.hole());
            },
            canvas::clear);
  }

  private void say(BlindHole hole) {
    words.line("drill to shoulder", both(hole.shoulder()));
    words.line("drill to its tip", both(hole.drillTip()));
    words.line("full thread", both(hole.fullThread()));
    words.line("lead of the tap", both(hole.tapLead()));
    words.line("room for chips", both(hole.chipRoom()));
    if (!hole.breaksThrough()) {
      words.line("metal left", both(hole.left()));
    }
    VerdictMark mark = hole.breaksThrough() ? VerdictMark.STRUCK : VerdictMark.HALF;
    hole.concerns().forEach(concern -> words.point(mark, concern));
    hole.sources().stream().map(TappingWords::source).distinct().forEach(words::remark);
  }

  private String both(Length length) {
    return LengthFormat.showBoth(length, desk.unit());
  }
}
