package org.fettlebench.desktop.threads.internal.folds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.threads.internal.sheet.FigureTable;
import org.fettlebench.desktop.threads.internal.sheet.Fold;
import org.fettlebench.desktop.threads.internal.sheet.Form;
import org.fettlebench.desktop.threads.internal.sheet.TableCanvas;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.LengthField;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.HeadSink;
import org.fettlebench.fasteners.HeadSinks;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fasteners.SinkWanted;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;

/** What is to be cut into the face for each head that is listed for a thread. */
public final class HeadsFold {
  private final Desk desk;
  private final Supplier<Optional<Heads>> heads;
  private final Supplier<Optional<HeadSinks>> sinks;
  private final Fold fold;
  private final LengthField below;
  private final Button washer;
  private final TableCanvas table;
  private final Label remarks;
  private Optional<Looked> looked = Optional.empty();

  /**
   * Makes the fold, folded until a person opens it.
   *
   * @param heads that are listed, while something lists them
   * @param sinks what works out the cut, while it is installed
   */
  public HeadsFold(
      Composite parent,
      Desk desk,
      String pageId,
      Supplier<Optional<Heads>> heads,
      Supplier<Optional<HeadSinks>> sinks) {
    this.desk = desk;
    this.heads = heads;
    this.sinks = sinks;
    fold = new Fold(parent, desk, pageId, "heads", "Sinking a head", false);
    Form form = new Form(fold.body(), desk, this::chosen);
    below = form.length("under the face", "flush");
    washer = form.tick("washer under the head");
    table = new TableCanvas(fold.body(), desk);
    remarks = fold.remarks();
    fold.whenOpened(this::fill);
  }

  /** Shows the cuts for a thread's heads. */
  public void show(Looked now) {
    looked = Optional.of(now);
    fill();
  }

  private void chosen() {
    if (remarks != null) {
      fill();
      fold.refit();
    }
  }

  private void fill() {
    looked.ifPresent(now -> heads.get().ifPresent(known -> fill(now, known)));
    if (heads.get().isEmpty() || sinks.get().isEmpty()) {
      fold.summary("nothing that works it out is installed");
    }
  }

  private void fill(Looked now, Heads known) {
    List<Head> listed = known.forThread(now.thread());
    fold.summary(
        listed.isEmpty()
            ? "no head is listed"
            : Figures.count(listed.size(), "head", "heads") + " listed");
    if (!fold.isOpen() || sinks.get().isEmpty()) {
      return;
    }
    LengthUnit first = desk.unit();
    String second = FigureTable.other(first).symbol();
    FigureTable.Maker maker =
        FigureTable.of("\u2300 " + first.symbol(), "deep", "\u2300 " + second, "deep");
    List<String> notes = new ArrayList<>();
    SinkWanted wanted =
        new SinkWanted(Optional.empty(), below.value().orElse(Length.ZERO), washer.getSelection());
    for (Head head : listed) {
      try {
        add(maker, sinks.get().get().of(now.thread(), head, wanted), notes);
      } catch (MeasureException refused) {
        notes.add(plain(head) + ": " + refused.getMessage());
      }
    }
    table.show(maker.made());
    notes.add("For a hole of the thread's major diameter: widen it to the clearance chosen.");
    Fold.tell(remarks, notes.stream().distinct().toArray(String[]::new));
  }

  private void add(FigureTable.Maker maker, HeadSink sink, List<String> notes) {
    LengthUnit first = desk.unit();
    LengthUnit other = FigureTable.other(first);
    String angle =
        sink.angleDegrees().map(degrees -> " " + Figures.show(degrees, 0) + "\u00b0").orElse("");
    maker.row(
        plain(sink.head()) + ", " + sink.kind().words() + angle,
        FigureTable.fine(sink.diameter(), first),
        deep(sink, first),
        FigureTable.fine(sink.diameter(), other),
        deep(sink, other));
    sink.notes().forEach(note -> notes.add(plain(sink.head()) + ": " + note));
    sink.sources().forEach(source -> notes.add(SourceWords.of(source)));
  }

  private static String plain(Head head) {
    return head.style().replace('-', ' ');
  }

  /** A spot face is only cut until it is clean. */
  private static String deep(HeadSink sink, LengthUnit unit) {
    return sink.depth().isPositive() ? FigureTable.fine(sink.depth(), unit) : "clean";
  }

  /** Returns the table that is shown, for the sheet of the thread. */
  public FigureTable table() {
    return table.table();
  }
}
