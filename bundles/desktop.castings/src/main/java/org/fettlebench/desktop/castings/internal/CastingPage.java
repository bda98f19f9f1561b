package org.fettlebench.desktop.castings.internal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.castings.CastingDrawings;
import org.fettlebench.castings.Castings;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Page;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.paper.CastingCards;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/** Answers: is there metal to finish the casting, and where to set out from? */
@Component
public final class CastingPage implements Page {
  static final String ID = "castings";

  private final Castings castings;
  private final CastingDrawings drawings;
  private final KitFiles files;

  /** Whether the suite was opened to look round, so that the example is shown at once. */
  private final boolean demo;

  private volatile Optional<CastingCards> cards = Optional.empty();
  private Optional<CastingSheet> sheet = Optional.empty();
  private Optional<Deeds> deeds = Optional.empty();

  /** Takes what it asks. */
  @Activate
  public CastingPage(
      @Reference Castings castings,
      @Reference CastingDrawings drawings,
      @Reference KitFiles files,
      BundleContext context) {
    this.castings = castings;
    this.drawings = drawings;
    this.files = files;
    this.demo = "demo".equals(context.getProperty("fettlebench.open"));
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setCards(CastingCards service) {
    cards = Optional.of(service);
  }

  void unsetCards(CastingCards service) {
    cards = Optional.empty();
  }

  @Override
  public String id() {
    return ID;
  }

  @Override
  public String title() {
    return "Casting";
  }

  @Override
  public int order() {
    return 25;
  }

  @Override
  public Control create(Composite parent, Desk desk) {
    Bench bench = new Bench(new Asker(desk, new CastingBook(castings)));
    bench.begin(Draft.read(desk.remembered(ID, "draft", "")));
    Deeds does = new Deeds(desk, bench, files, () -> cards);
    if (demo && bench.sketch().equals(Sketch.EMPTY)) {
      bench.begin(CastingText.sketch(files.readCasting(Example.NAME, Example.text())));
    }
    CastingSheet made = new CastingSheet(parent, desk, bench, drawings, does);
    does.draws(made.canvas()::drawing, made.canvas()::picture);
    new SheetKeys(made, does).watch();
    sheet = Optional.of(made);
    deeds = Optional.of(does);
    return made;
  }

  @Override
  public void focus() {
    shown().ifPresent(CastingSheet::begin);
  }

  private Optional<CastingSheet> shown() {
    return sheet.filter(each -> !each.isDisposed());
  }

  @Override
  public List<Found> find(String typed) {
    String wanted = typed.strip().toLowerCase(Locale.ROOT);
    String name = shown().map(each -> each.bench().sketch().name()).orElse("");
    String hay = ("casting clean up machining allowance " + name).toLowerCase(Locale.ROOT);
    return wanted.length() > 2 && hay.contains(wanted)
        ? List.of(new Found(ID, "", name.isBlank() ? title() : name, "on the page Casting"))
        : List.of();
  }

  @Override
  public boolean undo() {
    shown().ifPresent(CastingSheet::undo);
    return shown().isPresent();
  }

  @Override
  public void print() {
    deeds.ifPresent(Deeds::card);
  }

  @Override
  public void close() {
    shown().ifPresent(CastingSheet::keep);
    sheet = Optional.empty();
    deeds = Optional.empty();
  }
}
