package org.fettlebench.desktop.stock.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.club.ClubException;
import org.fettlebench.club.Receipt;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.FilterField;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.LongList;
import org.fettlebench.desktop.widgets.Split;

/** The page while there is stock: places, list, counter and ledger, and what happens there. */
final class StockView {
  private final Desk desk;
  private final StockShop shop;
  private final Composite page;
  private final Label summary;
  private final MemberField member;
  private final StockTools tools;
  private KindSwitch kinds;
  private PlaceTree places;
  private FilterField filter;
  private LongList<StockRow> list;
  private Counter counter;
  private Ledger ledger;
  private StockBook.Reading reading = StockBook.Reading.NONE;
  private StockBook.Names names = new StockBook.Names(List.of(), List.of());
  private Narrowing narrowing = Narrowing.NONE;
  private Runnable needed = () -> {};
  private boolean closing;
  private Consumer<StockBook.Reading> read = reading -> {};

  StockView(Composite parent, Desk desk, StockShop shop, LocalDate today) {
    this.desk = desk;
    this.shop = shop;
    page = Layouts.page(parent, desk.look());
    Composite top = Layouts.wide(Layouts.columns(page, 2));
    summary = Layouts.answer(top, desk.look(), "");
    member = new MemberField(top, desk, StockPage.ID, today);
    List<StockTools.Action> actions = actions();
    tools = new StockTools(page, desk.look(), actions);
    Split split = new Split(page, desk, SWT.HORIZONTAL, StockPage.ID, "places");
    left(split);
    Split below = new Split(split.form(), desk, SWT.VERTICAL, StockPage.ID, "ledger");
    middle(below);
    bottom(below);
    split.share(15, 85);
    below.share(64, 36);
    StockTools.keys(list, actions);
    StockTools.menu(list, actions);
    tools.haveLine(false);
    page.addListener(SWT.Dispose, event -> closing = true);
    desk.onLookChange(this::dress);
  }

  Control control() {
    return page;
  }

  /** Is told each time the stock was read. */
  StockView onRead(Consumer<StockBook.Reading> listener) {
    read = listener;
    return this;
  }

  /** Is told when a form or message stands on the page, also while there is no stock. */
  StockView onNeeded(Runnable listener) {
    needed = listener;
    return this;
  }

  private List<StockTools.Action> actions() {
    List<StockTools.Action> all = new ArrayList<>();
    all.add(StockTools.Action.always("&Receive", 'R', this::startReceiving));
    for (Deed deed : Deed.values()) {
      all.add(new StockTools.Action(deed.button(), deed.letter(), true, () -> start(deed)));
    }
    all.add(StockTools.Action.always("Receive a l&ist \u2026", ' ', this::askForList));
    all.add(StockTools.Action.always("E&xport \u2026", ' ', this::askWhereTo));
    return all;
  }

  private void left(Split split) {
    places = new PlaceTree(split.form(), desk.look(), path -> narrow(narrowing.place(path)));
  }

  private void middle(Split below) {
    Composite middle = Layouts.columns(below.form(), 1);
    Composite line = Layouts.wide(Layouts.columns(middle, 2));
    filter = new FilterField(line, desk, "2 BA hexagon brass, drawer 3, low, out \u2026");
    filter.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    kinds = new KindSwitch(line, desk.look(), kind -> narrow(narrowing.kind(kind)));
    list =
        Layouts.fill(
                new LongList<>(middle, desk, StockPage.ID, "stock", StockColumns.ofStock(desk)))
            .keyedBy(StockRow::id)
            .whenEmpty("Nothing in stock has all of these words. Esc empties the find box.")
            .onSelect(this::chosen)
            .onOpen(row -> start(Deed.TAKE))
            .sortBy("State", false);
    filter.narrows(list);
    list.onCount((shown, all) -> chooseFirst(shown));
  }

  /** The worst line stands first; while no other is chosen, the lower half tells of it. */
  private void chooseFirst(int shown) {
    if (!closing && shown > 0 && list.selection().isEmpty()) {
      list.selectRow(0);
    }
  }

  private void bottom(Split below) {
    Split halves = new Split(below.form(), desk, SWT.HORIZONTAL, StockPage.ID, "counter");
    counter = new Counter(halves.form(), desk.look());
    ledger = new Ledger(halves.form(), desk, shop.book());
    halves.share(52, 48);
  }

  private void dress() {
    if (!page.isDisposed()) {
      places.dress();
      list.refresh();
    }
  }

  private void narrow(Narrowing wanted) {
    narrowing = wanted;
    list.items(narrowing.of(reading.rows()));
  }

  private void chosen(List<StockRow> rows) {
    // A list that goes down may still pass the keyboard on and select.
    if (closing) {
      return;
    }
    counter.choose(rows);
    tools.haveLine(rows.size() == 1);
    ledger.show(rows.size() == 1 ? Optional.of(rows.get(0)) : Optional.empty());
  }

  /** Shows the stock as it was read. */
  void take(StockBook.Reading newReading) {
    if (page.isDisposed()) {
      return;
    }
    reading = newReading;
    summary.setText(Layouts.escaped(reading.summary()));
    places.show(reading.places());
    list.items(narrowing.of(reading.rows()));
    chosen(list.selection());
    read.accept(reading);
  }

  /** Offers the members and places seen so far. */
  void offer(StockBook.Names seen) {
    names = seen;
    if (!page.isDisposed()) {
      member.offer(seen.members());
    }
  }

  /** Nothing may come between a letter and its form, or the number typed next is lost. */
  private void start(Deed deed) {
    Optional<StockRow> row = counter.line();
    if (row.isEmpty()) {
      desk.say("Choose one line of the list first.");
      return;
    }
    List<MoveForm> made = new ArrayList<>();
    MoveForm.Hands hands =
        new MoveForm.Hands(names.members(), order -> perform(order, made.get(0)), this::backToList);
    made.add(
        new MoveForm(
                counter.form(deed.heading() + ": " + row.get().goods().name()),
                desk.look(),
                deed,
                row.get(),
                hands)
            .by(member.name()));
    counter.fit();
    made.get(0).focus();
  }

  private void perform(Order order, MoveForm form) {
    desk.work(
        order.deed().title(),
        () -> shop.after(reading, shop.deeds().perform(order)),
        answer -> {
          if (answer.outcome() instanceof Outcome.Refused refused) {
            form.refuse(refused);
            counter.fit();
          } else {
            backToList();
            happened(answer);
          }
        });
  }

  /** Begins to receive; also from outside the list. */
  void startReceiving() {
    needed.run();
    List<ReceiveForm> made = new ArrayList<>();
    made.add(
        new ReceiveForm(
                counter.form("Receive"),
                desk.look(),
                shop.files(),
                arrival -> receive(arrival, made.get(0)),
                this::backToList)
            .places(names.places()));
    counter.fit();
    made.get(0).focus();
  }

  private void receive(Arrival arrival, ReceiveForm form) {
    Arrival.Read typed = arrival.read(shop.files());
    if (typed.refused().isPresent()) {
      form.refuse(typed.refused().get());
      counter.fit();
      return;
    }
    List<Receipt> one = typed.receipt().stream().toList();
    String who = member.name();
    desk.work(
        "Receiving",
        () -> shop.after(reading, shop.deeds().receive(one, who, "")),
        answer -> {
          if (answer.outcome() instanceof Outcome.Refused refused) {
            form.refuse(refused);
          } else {
            happened(answer);
            form.next();
          }
          counter.fit();
        });
  }

  /** Asks for a list and receives it. */
  void askForList() {
    StockLists.askToOpen(desk.shell()).ifPresent(this::receive);
  }

  /** Receives everything on a list, or shows what is wrong with it. */
  void receive(Path file) {
    String who = member.name();
    desk.work(
        "Receiving " + file.getFileName(),
        () -> shop.lists().receive(file, who),
        taken -> {
          if (taken.outcome().isEmpty()) {
            needed.run();
            FaultList.show(counter.form("Receive " + taken.file()), desk, taken, this::backToList);
            counter.fit();
          } else {
            reread(taken.outcome().get());
          }
        });
  }

  private void reread(Outcome outcome) {
    desk.work("Reading the stock", () -> shop.after(reading, outcome), this::happened);
  }

  private void askWhereTo() {
    StockLists.askToSave(desk.shell()).ifPresent(this::export);
  }

  /** Writes what the list shows. */
  void export(Path file) {
    var shown = list.model().shown().stream().map(StockRow::line).toList();
    desk.work("Exporting", () -> shop.lists().export(shown, file), desk::say);
  }

  private void happened(StockShop.Answer answer) {
    ledger.outdated();
    offer(answer.names());
    take(answer.reading());
    if (answer.outcome() instanceof Outcome.Done done) {
      done.lines().stream().limit(1).forEach(id -> list.select(id));
      done.undo()
          .ifPresentOrElse(
              undo -> desk.say(done.sentence(), () -> undo(undo)), () -> desk.say(done.sentence()));
    } else if (answer.outcome() instanceof Outcome.Refused refused) {
      desk.complain(refused.why());
    }
  }

  private void undo(Callable<Outcome.Done> undo) {
    desk.work("Undoing", () -> shop.after(reading, undone(undo)), this::happened);
  }

  private static Outcome undone(Callable<Outcome.Done> undo) throws Exception {
    try {
      return undo.call();
    } catch (ClubException refused) {
      return new Outcome.Refused(
          Outcome.Field.ALL, "That cannot be undone: " + refused.getMessage());
    }
  }

  private void backToList() {
    counter.rest();
    list.setFocus();
  }

  void focus() {
    list.setFocus();
  }

  /** Shows a line, whatever was asked for before. */
  boolean show(long id) {
    filter.type("");
    kinds.all();
    places.choose("");
    narrow(Narrowing.NONE);
    return list.select(id);
  }

  void print() {
    String asked = filter.typed().isBlank() ? "" : ": " + filter.typed().strip();
    list.print("Stock" + asked + (narrowing.place().isEmpty() ? "" : ", " + narrowing.place()));
  }
}
