package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.seats.internal.Sketch.Measured;
import org.fettlebench.desktop.seats.internal.Sketch.Top;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.threads.ScrewThread;

/** What shall sit on the flat: thread and head from the tables, or a head as measured. */
final class HeadSection {
  private static final String AS_MEASURED = "a head as measured \u2026";

  private final Desk desk;
  private final Bench bench;
  private final SeatBook book;
  private final Combo thread;
  private final Combo head;
  private final FigureField flats;
  private final FigureField corners;
  private final Composite measured;
  private final Combo set;
  private final Combo tool;
  private final Label figures;
  private List<HeldHeads.Held> offered = List.of();
  private boolean showing;

  HeadSection(Composite parent, Desk desk, Bench bench, SeatBook book) {
    this.desk = desk;
    this.bench = bench;
    this.book = book;
    Form form = new Form(Form.section(parent, desk, "2  What shall sit there").body(), desk, 2);
    form.name("Thread");
    thread = form.field(new Combo(form.body(), SWT.DROP_DOWN));
    thread.setFont(desk.look().text());
    thread.addListener(SWT.Modify, event -> threadTyped());
    thread.setToolTipText("Type it as usual: 2 BA, M4, 1/4 BSF. Those in stock come first.");
    Form.unwheeled(thread);
    set = form.choice("Set", List.of("any way", "flats along x", "flats along y"), this::setChosen);
    head = form.wide().choice("Head", List.of(), this::headChosen);
    measured = form.across(new Composite(form.body(), SWT.NONE));
    measured.setBackground(form.body().getBackground());
    Form sizes = new Form(measured, desk);
    flats = sizes.figure("Across flats", length -> size(length, true)).hint("none if round");
    corners = sizes.figure("Corners or dia.", length -> size(length, false));
    tool =
        form.wide()
            .choice(
                "Room for",
                List.of("the head alone", "a ring spanner", "an open spanner", "a socket"),
                this::toolChosen);
    figures = form.remark("");
  }

  private void toolChosen(int index) {
    Optional<Spanner.Kind> kind =
        index > 0 ? Optional.of(Spanner.Kind.values()[index - 1]) : Optional.empty();
    Sketch now = bench.sketch();
    if (kind.isPresent() && book.spanner(kind.get(), now).isEmpty()) {
      desk.say("No table and no rule has such a tool for this head.");
      show();
      return;
    }
    change("spanner chosen", top -> top.turnedBy(kind.flatMap(each -> book.spanner(each, now))));
  }

  private void threadTyped() {
    if (showing) {
      return;
    }
    Optional<ScrewThread> found = book.thread(thread.getText());
    thread.setForeground(found.isPresent() ? desk.look().ink() : desk.look().bad());
    found.ifPresent(
        each -> {
          List<HeldHeads.Held> heads = book.heads().of(each);
          String style = bench.sketch().top().style();
          String kept =
              heads.stream().anyMatch(held -> held.head().style().equals(style))
                  ? style
                  : heads.stream().findFirst().map(held -> held.head().style()).orElse("");
          change(
              "thread chosen: " + each.designation(), top -> top.listed(each.designation(), kept));
        });
  }

  private void change(String words, java.util.function.UnaryOperator<Top> change) {
    bench.apply(
        new Change<>(words, "head", sketch -> fitted(sketch.with(change.apply(sketch.top())))));
  }

  /** Another head wants another size of the same tool. */
  private Sketch fitted(Sketch sketch) {
    Optional<Spanner> tool = sketch.top().spanner();
    return tool.isEmpty()
        ? sketch
        : sketch.with(sketch.top().turnedBy(book.spanner(tool.get().kind(), sketch)));
  }

  private void headChosen(int index) {
    if (index == offered.size()) {
      change("head as measured", top -> top.asMeasured(asNow()));
    } else if (index >= 0) {
      String style = offered.get(index).head().style();
      change("head chosen", top -> top.listed(top.thread(), style));
    }
  }

  private Measured asNow() {
    Optional<SeatedHead> now = book.head(bench.sketch());
    return new Measured(
        "head as measured",
        now.map(SeatedHead::acrossFlatsMm).orElse(OptionalDouble.empty()),
        now.map(each -> OptionalDouble.of(each.sweepDiameterMm())).orElse(OptionalDouble.empty()),
        now.map(SeatedHead::heightMm).orElse(OptionalDouble.empty()));
  }

  private void size(Optional<Length> length, boolean ofFlats) {
    OptionalDouble mm =
        length.filter(Length::isPositive).isPresent()
            ? OptionalDouble.of(length.get().millimetres())
            : OptionalDouble.empty();
    change(
        ofFlats ? "across flats typed" : "across corners typed",
        top ->
            top.asMeasured(
                top.measured()
                    .map(
                        head ->
                            new Measured(
                                head.title(),
                                ofFlats ? mm : head.acrossFlatsMm(),
                                ofFlats ? OptionalDouble.empty() : mm,
                                head.heightMm()))
                    .orElseGet(this::asNow)));
  }

  private void setChosen(int index) {
    OptionalDouble degrees =
        index == 0 ? OptionalDouble.empty() : OptionalDouble.of(index == 1 ? 0 : 90);
    change("head set", top -> top.set(degrees));
  }

  /** Shows the sketch of now. */
  void show() {
    showing = true;
    if (thread.getItemCount() == 0) {
      thread.setItems(book.threadNames().toArray(String[]::new));
    }
    Top top = bench.sketch().top();
    boolean typing = thread.isFocusControl() && book.thread(thread.getText()).isPresent();
    if (!typing && !thread.getText().equals(top.thread())) {
      thread.setText(top.thread());
    }
    offer(top);
    Layouts.present(measured, top.measured().isPresent());
    top.measured()
        .ifPresent(
            sizes -> {
              flats.show(length(sizes.acrossFlatsMm()));
              corners.show(length(sizes.acrossCornersMm()));
            });
    double along = top.flatsAlongDegrees().orElse(-1);
    set.select(along < 0 ? 0 : along == 0 ? 1 : along == 90 ? 2 : -1);
    tool.select(top.spanner().map(each -> each.kind().ordinal() + 1).orElse(0));
    Layouts.say(figures, figures(top));
    showing = false;
  }

  private void offer(Top top) {
    offered = book.thread(top.thread()).map(book.heads()::of).orElse(List.of());
    String[] items =
        java.util.stream.Stream.concat(
                offered.stream().map(HeldHeads.Held::words),
                java.util.stream.Stream.of(AS_MEASURED))
            .toArray(String[]::new);
    if (!java.util.Arrays.equals(items, head.getItems())) {
      head.setItems(items);
    }
    int at = offered.size();
    for (int i = 0; top.measured().isEmpty() && i < offered.size(); i++) {
      at = offered.get(i).head().style().equals(top.style()) ? i : at;
    }
    boolean none = top.measured().isEmpty() && at == offered.size();
    if (none) {
      head.deselectAll();
    } else if (head.getSelectionIndex() != at) {
      head.select(at);
    }
  }

  private static Optional<Length> length(OptionalDouble mm) {
    return mm.isPresent() ? Optional.of(Length.ofMillimetres(mm.getAsDouble())) : Optional.empty();
  }

  /** Says how large the head is and how far the figures may be trusted. */
  private String figures(Top top) {
    Optional<SeatedHead> sits = book.head(bench.sketch());
    if (sits.isEmpty()) {
      return book.thread(top.thread()).isPresent() && offered.isEmpty()
          ? "No table has a head for this thread: choose \u201c" + AS_MEASURED + "\u201d."
          : "";
    }
    String source =
        book.thread(top.thread())
            .filter(each -> top.measured().isEmpty())
            .flatMap(each -> book.heads().find(top.style(), each))
            .map(
                each ->
                    ". " + each.source().citation() + ", " + each.source().standing().words() + ".")
            .orElse(", as measured.");
    SeatedHead each = sits.get();
    return (each.acrossFlatsMm().isPresent()
            ? "Across flats " + both(each.acrossFlatsMm().getAsDouble()) + ", corners "
            : "Diameter ")
        + both(each.sweepDiameterMm())
        + source
        + each.spanner().map(HeadSection::toolWords).orElse("");
  }

  private static String toolWords(Spanner tool) {
    return " " + SeatWords.upper(tool.title()) + ": " + tool.standing() + ".";
  }

  private String both(double mm) {
    return LengthFormat.showBoth(Length.ofMillimetres(mm), desk.unit());
  }

  void unitChanged() {
    flats.unitChanged();
    corners.unitChanged();
    show();
  }

  Combo thread() {
    return thread;
  }

  Combo head() {
    return head;
  }
}
