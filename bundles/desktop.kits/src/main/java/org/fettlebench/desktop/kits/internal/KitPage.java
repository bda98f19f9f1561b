package org.fettlebench.desktop.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.club.KitShelf;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.club.Stock;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Page;
import org.fettlebench.fits.SeatDrawings;
import org.fettlebench.kits.DemoClub;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.KitCheck;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.KitReports;
import org.fettlebench.modules.Modules;
import org.fettlebench.paper.BenchCards;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/** Answers: can this kit be built? */
@Component
public final class KitPage implements Page, KitDeeds.Watcher {
  static final String ID = "kits";

  private static final String JOINT = "joint:";
  private static final String KIT = "kit:";

  private final KitBook book;
  private final KitReports reports;
  private final SeatDrawings drawings;
  private volatile Optional<DemoClub> demo = Optional.empty();
  private volatile Optional<BenchCards> cards = Optional.empty();
  private Optional<KitView> view = Optional.empty();
  private Optional<Desk> desk = Optional.empty();
  private Optional<String> jointWanted = Optional.empty();
  private boolean keyboardWanted;
  private int asked;

  /** Takes what it asks. */
  @Activate
  @SuppressWarnings("checkstyle:ParameterNumber")
  public KitPage(
      @Reference KitFiles files,
      @Reference KitCheck check,
      @Reference KitReports reports,
      @Reference Stock stock,
      @Reference MeasuredErrors errors,
      @Reference KitShelf shelf,
      @Reference SeatDrawings drawings,
      @Reference Modules modules) {
    this.book = new KitBook(files, check, stock, errors, shelf, modules);
    this.reports = reports;
    this.drawings = drawings;
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setDemo(DemoClub club) {
    demo = Optional.of(club);
  }

  void unsetDemo(DemoClub club) {
    demo = Optional.empty();
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setCards(BenchCards service) {
    cards = Optional.of(service);
  }

  void unsetCards(BenchCards service) {
    cards = Optional.empty();
  }

  @Override
  public String id() {
    return ID;
  }

  @Override
  public String title() {
    return "Kit check";
  }

  @Override
  public int order() {
    return 10;
  }

  @Override
  public Control create(Composite parent, Desk newDesk) {
    desk = Optional.of(newDesk);
    KitDeeds deeds = new KitDeeds(newDesk, book, () -> demo, this);
    KitView made = new KitView(parent, newDesk, reports, drawings, deeds);
    view = Optional.of(made);
    new KitKeys(made, this::check).watch();
    return made;
  }

  @Override
  public void refresh() {
    view.ifPresent(shown -> look(shown.shown(), checked -> {}));
  }

  @Override
  public void check() {
    look(
        KitBook.Shown.EMPTY,
        checked ->
            desk.ifPresent(
                place -> place.say(checked.kit() + " is checked against the stock as it is now.")));
  }

  @Override
  public void choose(String kit) {
    desk.ifPresent(place -> place.remember(ID, "kit", kit));
    refresh();
  }

  @Override
  public Optional<String> kit() {
    return view.flatMap(shown -> shown.shown().checked()).map(KitBook.Checked::kit);
  }

  /** Looks at the kit wanted, off the window's thread; a later look takes the place of this one. */
  private void look(KitBook.Shown before, java.util.function.Consumer<KitBook.Checked> done) {
    Desk place = desk.orElseThrow();
    String remembered = place.remembered(ID, "kit", "");
    int mine = ++asked;
    place.work(
        "Checking the kit",
        () -> book.look(remembered.isEmpty() ? demoKit() : remembered, before),
        looked -> {
          if (mine == asked) {
            show(looked);
            looked.checked().ifPresent(done);
          }
        });
  }

  private String demoKit() {
    return demo.map(DemoClub::kitName).orElse("");
  }

  private void show(KitBook.Shown looked) {
    view.filter(shown -> !shown.isDisposed())
        .ifPresent(
            shown -> {
              shown.show(looked, demo.isPresent());
              jointWanted.ifPresent(shown::showJoint);
              jointWanted = Optional.empty();
              if (keyboardWanted) {
                keyboardWanted = false;
                shown.begin();
              }
            });
  }

  @Override
  public void focus() {
    // Before the first check is done there is nothing to put it on.
    keyboardWanted = kit().isEmpty();
    view.ifPresent(KitView::begin);
  }

  @Override
  public List<Found> find(String typed) {
    List<Found> found = new ArrayList<>();
    KitBook.Shown shown = view.map(KitView::shown).orElse(KitBook.Shown.EMPTY);
    shown
        .report()
        .ifPresent(
            report ->
                JointsList.rows(report).stream()
                    .filter(
                        row -> holds(row.name() + " " + row.part() + " " + row.fastener(), typed))
                    .map(KitPage::found)
                    .forEach(found::add));
    shown.kits().stream()
        .filter(kit -> holds(kit, typed))
        .map(kit -> new Found(ID, KIT + kit, kit, "kit on the shelf"))
        .forEach(found::add);
    return found;
  }

  private static Found found(JointRow row) {
    return new Found(
        ID,
        JOINT + row.name(),
        row.name(),
        "joint of " + row.part() + ", " + row.fastener() + ", " + row.word());
  }

  /** Every word typed must stand somewhere in it, as in the page's lists. */
  private static boolean holds(String words, String typed) {
    String hay = words.toLowerCase(Locale.ROOT).replace(" ", "");
    String[] parts = typed.strip().toLowerCase(Locale.ROOT).split("\\s+");
    return !typed.isBlank() && java.util.Arrays.stream(parts).allMatch(hay::contains);
  }

  @Override
  public void show(Found found) {
    if (found.key().startsWith(KIT)) {
      choose(found.key().substring(KIT.length()));
    } else if (found.key().startsWith(JOINT)) {
      jointWanted = Optional.of(found.key().substring(JOINT.length()));
      refresh();
    }
  }

  @Override
  public void print() {
    if (view.filter(KitView::shortListShown).isPresent()) {
      report();
    } else {
      card();
    }
  }

  @Override
  public void card() {
    view.flatMap(KitView::report)
        .ifPresent(
            report ->
                view.flatMap(shown -> shown.panel().shown())
                    .filter(report.joints()::contains)
                    .ifPresent(joint -> papers().card(report, joint)));
  }

  @Override
  public void report() {
    view.flatMap(KitView::report).ifPresent(report -> papers().report(report));
  }

  @Override
  public void seat() {
    Optional<JointReport> joint = view.flatMap(shown -> shown.panel().shown());
    if (kit().isPresent() && joint.filter(each -> each.joint().seat().isPresent()).isPresent()) {
      String name = joint.get().joint().name();
      String key = JOINT + kit().get() + "/" + name;
      desk.orElseThrow().go(new Found("seats", key, name, "seat of a joint"));
    } else {
      desk.orElseThrow().say("No seat was measured for this joint.");
    }
  }

  private Papers papers() {
    return new Papers(desk.orElseThrow(), () -> cards);
  }

  @Override
  public void close() {
    asked++;
    view = Optional.empty();
    desk = Optional.empty();
  }
}
