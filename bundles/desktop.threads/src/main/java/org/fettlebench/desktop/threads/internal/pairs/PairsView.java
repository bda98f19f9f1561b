package org.fettlebench.desktop.threads.internal.pairs;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.threads.internal.compare.Crossing;
import org.fettlebench.desktop.threads.internal.compare.CrossingBook;
import org.fettlebench.desktop.threads.internal.compare.CrossingDrawing;
import org.fettlebench.desktop.threads.internal.compare.CrossingWords;
import org.fettlebench.desktop.threads.internal.sheet.AnswerBand;
import org.fettlebench.desktop.widgets.Column;
import org.fettlebench.desktop.widgets.DrawingCanvas;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.FilterField;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.LongList;
import org.fettlebench.desktop.widgets.Split;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.identify.CrossPair;
import org.fettlebench.threads.identify.CrossingRule;
import org.fettlebench.threads.identify.ThreadIdentifier;

/** The list of all pairs that could be crossed; choosing one lays it over. */
public final class PairsView {
  private final Desk desk;
  private final String pageId;
  private final ThreadIdentifier identifier;
  private final CrossingBook book;
  private final Composite face;
  private final AnswerBand band;
  private final FilterField filter;
  private final Button same;
  private final LongList<CrossPair> list;
  private final DrawingCanvas canvas;
  private List<CrossPair> all = List.of();
  private int revision = -1;

  /**
   * Makes the view.
   *
   * @param compare is told screw and nut to lay over each other in full
   */
  public PairsView(
      Composite parent,
      Desk desk,
      String pageId,
      ThreadIdentifier identifier,
      CrossingBook book,
      BiConsumer<String, String> compare) {
    this.desk = desk;
    this.pageId = pageId;
    this.identifier = identifier;
    this.book = book;
    face = Layouts.columns(parent, 1);
    band = new AnswerBand(face, desk, "Pairs that could be crossed", rule(), 1);
    Composite row = Layouts.wide(Layouts.columns(face, 3));
    filter = new FilterField(row, desk, "2 BA, UNF, binds ...");
    GridData room = new GridData(SWT.FILL, SWT.CENTER, true, false);
    filter.setLayoutData(room);
    same = new Button(row, SWT.CHECK);
    same.setText("&same thread under two names too");
    same.setFont(desk.look().text());
    same.setForeground(desk.look().ink());
    same.setBackground(row.getBackground());
    same.setSelection(desk.remembered(pageId, "same", "").equals("yes"));
    same.addListener(SWT.Selection, event -> shown());
    Split split = new Split(face, desk, SWT.HORIZONTAL, pageId, "pairs");
    list =
        new LongList<>(split.form(), desk, pageId, "pairs", columns())
            .keyedBy(pair -> pair.first().designation() + "|" + pair.second().designation())
            .whenEmpty("No two threads of the series that are enabled come near each other.")
            .onSelect(rows -> rows.stream().findFirst().ifPresent(this::lay))
            .onOpen(p -> compare.accept(p.first().designation(), p.second().designation()));
    Layouts.button(row, desk.look(), "&Copy list", list::copy);
    canvas = new DrawingCanvas(split.form(), desk);
    canvas.whenEmpty("Choose a pair: it is laid over here. Enter compares it in full.");
    split.share(66, 34);
    filter.narrows(list);
    desk.onLookChange(() -> list.selection().stream().findFirst().ifPresent(this::lay));
  }

  private static String rule() {
    CrossingRule usual = CrossingRule.USUAL;
    return "Diameters within "
        + Figures.show(usual.diameterShare(), 1)
        + " of the finer pitch and pitches within a twelfth of it (common practice, no source)."
        + " Enter compares a pair in full.";
  }

  private List<Column<CrossPair>> columns() {
    return List.of(
        Column.<CrossPair>words("Thread", 13, pair -> pair.first().designation()),
        Column.<CrossPair>words("taken for", 13, pair -> pair.second().designation()),
        Column.<CrossPair>lengths("Larger", desk, p -> Optional.of(p.diameterDifference()))
            .wide(12),
        Column.<CrossPair>figures("Pitch off", "%", 1, PairsView::pitchOff).wide(12),
        Column.<CrossPair>figures("\u00bd pitch after", "", 1, PairsView::half).wide(13),
        Column.<CrossPair>words("What happens", 18, CrossingWords::inShort).upTo(30));
  }

  private static OptionalDouble pitchOff(CrossPair pair) {
    return OptionalDouble.of(
        100 * pair.pitchDifference().millimetres() / pair.first().pitch().millimetres());
  }

  private static OptionalDouble half(CrossPair pair) {
    return Crossing.of(pair.first(), pair.second()).threadsToHalf();
  }

  /** Returns the control to lay out. */
  public Composite control() {
    return face;
  }

  /** Looks up the pairs of all series that are enabled, unless that was done for them before. */
  public void refresh(List<ScrewThread> enabled) {
    if (enabled.hashCode() != revision) {
      desk.work(
          "Looking up the pairs that could be crossed",
          () -> identifier.pairs(List.of(), CrossingRule.USUAL),
          found -> take(found, enabled.hashCode()));
    }
  }

  private void take(List<CrossPair> found, int of) {
    if (!face.isDisposed()) {
      revision = of;
      all = found;
      shown();
    }
  }

  private void shown() {
    desk.remember(pageId, "same", same.getSelection() ? "yes" : "no");
    List<CrossPair> wanted =
        all.stream().filter(p -> same.getSelection() || p.kind() != CrossPair.Kind.SAME).toList();
    list.items(wanted);
    long binding = wanted.stream().filter(p -> p.kind() == CrossPair.Kind.BINDS).count();
    band.say(
        Figures.count(wanted.size(), "pair", "pairs")
            + " could be crossed: "
            + binding
            + " start and then bind",
        rule());
  }

  private void lay(CrossPair pair) {
    Crossing crossing = book.crossing(pair.first(), pair.second());
    canvas.show(CrossingDrawing.of(crossing, crossing.usualThreads(), desk.unit()));
    desk.say(CrossingWords.answer(crossing, crossing.usualThreads()) + ".");
  }

  /** Puts the keyboard where the work begins. */
  public void focus() {
    filter.setFocus();
  }

  /** Prints the list as it is shown. */
  public void print() {
    list.print("Pairs of threads that could be crossed");
  }
}
