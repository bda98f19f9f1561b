package org.fettlebench.desktop.kits.internal;

import static org.mockito.Mockito.lenient;
import static org.mockito.Mockito.mock;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.KitShelf;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.widgets.trial.TrialDesk;
import org.fettlebench.fits.internal.SeatPainter;
import org.fettlebench.kits.DemoClub;
import org.fettlebench.kits.internal.KitReportsService;
import org.fettlebench.modules.Modules;
import org.fettlebench.testkit.trade.RealTrade;

/** A club in memory: a shelf of kits and a stock, with the real check over them. */
final class Club {
  static final String DEMO = "Kestrel bench pump";

  final Stock stock = mock(Stock.class);
  final Modules modules = mock(Modules.class);
  final MeasuredErrors errors = mock(MeasuredErrors.class);
  final Shelf shelf = new Shelf();
  long stockRevision;
  long modulesRevision;
  List<StockLine> lines = List.of();

  Club() {
    lenient().when(stock.revision()).thenAnswer(call -> stockRevision);
    lenient().when(stock.lines()).thenAnswer(call -> lines);
    lenient().when(modules.revision()).thenAnswer(call -> modulesRevision);
  }

  /** Returns a club that holds the demo kit and the demo stock. */
  static Club demo() {
    Club club = new Club();
    club.shelf.keep(DEMO, text("bench-pump.kit.toml"));
    club.stock(text("stock.csv"));
    return club;
  }

  static String text(String file) {
    String path = "/FETTLEBENCH/demo/" + file;
    try (InputStream bytes = Club.class.getResourceAsStream(path)) {
      return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** Puts a stock list in place of the stock. */
  void stock(String csv) {
    List<StockLine> all = new ArrayList<>();
    for (Receipt receipt : RealTrade.STOCK_FILES.readStock("stock.csv", csv)) {
      all.add(
          new StockLine(
              all.size() + 1,
              receipt.goods(),
              receipt.place(),
              receipt.condition(),
              receipt.quantity(),
              List.of(),
              Optional.empty()));
    }
    lines = all;
    stockRevision++;
  }

  KitBook book() {
    return new KitBook(RealTrade.KIT_FILES, RealTrade.KIT_CHECK, stock, errors, shelf, modules);
  }

  KitPage page() {
    return new KitPage(
        RealTrade.KIT_FILES,
        RealTrade.KIT_CHECK,
        new KitReportsService(),
        stock,
        errors,
        shelf,
        new SeatPainter(),
        modules);
  }

  /** Opens the page in a window. */
  KitView open(TrialDesk desk, KitPage page, int width, int height) {
    KitView view = (KitView) page.create(desk.shell(), desk);
    desk.open(width, height);
    page.refresh();
    page.focus();
    desk.settle();
    return view;
  }

  DemoClub demoClub() {
    DemoClub club = mock(DemoClub.class);
    lenient().when(club.kitName()).thenReturn(DEMO);
    lenient()
        .doAnswer(
            call -> {
              shelf.keep(DEMO, text("bench-pump.kit.toml"));
              stock(text("stock.csv"));
              return null;
            })
        .when(club)
        .load();
    return club;
  }

  /** Kits in the order in which they were put there, newest first. */
  static final class Shelf implements KitShelf {
    private final List<KeptKit> kits = new ArrayList<>();

    @Override
    public List<KeptKit> kits() {
      return List.copyOf(kits);
    }

    @Override
    public Optional<KeptKit> kit(String name) {
      return kits.stream().filter(kit -> kit.name().equals(name)).findFirst();
    }

    @Override
    public Optional<KeptKit> keep(String name, String text) {
      Optional<KeptKit> before = remove(name);
      kits.add(0, new KeptKit(name, text, Instant.EPOCH));
      return before;
    }

    @Override
    public Optional<KeptKit> remove(String name) {
      Optional<KeptKit> found = kit(name);
      found.ifPresent(kits::remove);
      return found;
    }
  }
}
