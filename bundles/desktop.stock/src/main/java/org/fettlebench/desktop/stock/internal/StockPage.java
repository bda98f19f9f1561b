package org.fettlebench.desktop.stock.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.club.Stock;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Page;
import org.fettlebench.kits.DemoClub;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.StockFiles;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** What have we, how many, where, and who has it? */
@Component
public final class StockPage implements Page {
  static final String ID = "stock";

  /** How often a standing page looks whether others changed the stock; asking costs nothing. */
  private static final int LOOK_MS = 2000;

  private final StockShop shop;
  private final StockFinder finder;
  private final Optional<DemoClub> demo;
  private Desk desk;
  private Composite stacked;
  private StackLayout stack;
  private FirstSteps firstSteps;
  private StockView view;
  private StockBook.Reading reading = StockBook.Reading.NONE;
  private volatile boolean looking;
  private long wanted = -1;

  /** Made by Declarative Services. */
  @Activate
  public StockPage(
      @Reference Stock stock,
      @Reference StockFiles files,
      @Reference KitFiles texts,
      @Reference(
              cardinality = ReferenceCardinality.OPTIONAL,
              policyOption = ReferencePolicyOption.GREEDY)
          Optional<DemoClub> demo) {
    StockBook book = new StockBook(stock, LocalDate::now);
    StockDeeds deeds = new StockDeeds(stock, LocalDate::now);
    this.shop = new StockShop(book, deeds, new StockLists(texts, files, deeds), files);
    this.finder = new StockFinder(book);
    this.demo = demo;
  }

  @Override
  public String id() {
    return ID;
  }

  @Override
  public String title() {
    return "Stock";
  }

  @Override
  public int order() {
    return 60;
  }

  @Override
  public Control create(Composite parent, Desk newDesk) {
    desk = newDesk;
    reading = StockBook.Reading.NONE;
    stacked = new Composite(parent, SWT.NONE);
    stacked.setBackground(desk.look().ground());
    stack = new StackLayout();
    stacked.setLayout(stack);
    view =
        new StockView(stacked, desk, shop, LocalDate.now())
            .onRead(this::know)
            .onNeeded(() -> front(view.control()));
    firstSteps =
        new FirstSteps(
            stacked,
            desk.look(),
            new FirstSteps.Ways(
                view::startReceiving, view::askForList, this::loadDemo, demo.isPresent()));
    stack.topControl = view.control();
    watch();
    return stacked;
  }

  private void watch() {
    if (!stacked.isDisposed()) {
      if (stacked.isVisible()) {
        refresh();
      }
      stacked.getDisplay().timerExec(LOOK_MS, this::watch);
    }
  }

  @Override
  public void refresh() {
    if (!looking && shop.book().stale(reading)) {
      looking = true;
      desk.work("Reading the stock", this::look, this::take);
    }
  }

  private record Look(StockBook.Reading reading, StockBook.Names names) {}

  private Look look() {
    try {
      return new Look(shop.book().read(), shop.book().names());
    } finally {
      looking = false;
    }
  }

  private void take(Look look) {
    view.offer(look.names());
    view.take(look.reading());
    if (wanted >= 0 && view.show(wanted)) {
      wanted = -1;
    }
  }

  private void know(StockBook.Reading newReading) {
    reading = newReading;
    finder.know(newReading);
    front(newReading.rows().isEmpty() ? firstSteps.control() : view.control());
  }

  private void front(Control control) {
    if (stack.topControl != control) {
      stack.topControl = control;
      stacked.layout();
    }
  }

  private void loadDemo() {
    desk.work(
        "Loading the demo club",
        () -> {
          demo.ifPresent(DemoClub::load);
          return look();
        },
        look -> {
          take(look);
          desk.say("The demo club's stock is in the book, and its kit is on the shelf.");
        });
  }

  @Override
  public void focus() {
    if (stack.topControl == view.control()) {
      view.focus();
    } else {
      firstSteps.control().setFocus();
    }
  }

  @Override
  public List<Found> find(String typed) {
    return finder.find(typed);
  }

  @Override
  public void show(Found found) {
    long id = Long.parseLong(found.key());
    if (!view.show(id)) {
      wanted = id;
    }
  }

  @Override
  public void print() {
    view.print();
  }
}
