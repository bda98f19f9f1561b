package org.fettlebench.demo.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.KitShelf;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.kits.DemoClub;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.StockFiles;
import org.fettlebench.modules.ModulesListener;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Loads the invented club and its kit, at once when the suite was started on the demo. */
@Component(
    immediate = true,
    service = {DemoClub.class, ModulesListener.class})
public class DemoClubService implements DemoClub, ModulesListener {
  /** The kit's name, as its file says; a test holds the two together. */
  static final String KIT_NAME = "Kestrel bench pump";

  private static final Logger LOG = LoggerFactory.getLogger(DemoClubService.class);
  private static final String MEMBER = "Member 7";
  private static final int LOAN_DAYS = 14;

  /** What is out on loan in the demo. */
  private static final List<Loan> LOANS =
      List.of(
          new Loan("4 BA bottoming tap", "Member 12"),
          new Loan("M5 set of taps", "Member 3"),
          new Loan("Tap wrench, small", "Member 12"));

  private record Loan(String goods, String member) {}

  private final KitFiles kitFiles;
  private final StockFiles stockFiles;
  private final Stock stock;
  private final KitShelf shelf;
  private final Clock clock;
  private boolean wanted;

  /** Loads the demo if the suite was started on it and the club has nothing yet. */
  @Activate
  public DemoClubService(
      @Reference KitFiles kitFiles,
      @Reference StockFiles stockFiles,
      @Reference Stock stock,
      @Reference KitShelf shelf,
      BundleContext context) {
    this(kitFiles, stockFiles, stock, shelf, Clock.systemDefaultZone());
    wanted = "demo".equals(context.getProperty("fettlebench.open"));
    if (!storeIsMade(context.getProperty("fettlebench.data"))) {
      loadIfWanted();
    }
  }

  /**
   * Returns whether an earlier start has made the store. Then the demo is most likely in it, and
   * the window need not wait until that has been looked up: {@link #modulesChanged} does it later.
   */
  private static boolean storeIsMade(String data) {
    return data != null && Files.isDirectory(Path.of(data, "store"));
  }

  DemoClubService(
      KitFiles kitFiles, StockFiles stockFiles, Stock stock, KitShelf shelf, Clock clock) {
    this.kitFiles = kitFiles;
    this.stockFiles = stockFiles;
    this.stock = stock;
    this.shelf = shelf;
    this.clock = clock;
  }

  /**
   * Told soon after the start, off the window's thread, and whenever tables come up after this
   * bundle; then what could not be read before can be now.
   */
  @Override
  public void modulesChanged() {
    loadIfWanted();
  }

  private synchronized void loadIfWanted() {
    if (!wanted) {
      return;
    }
    try {
      if (stock.lines().isEmpty() && shelf.kits().isEmpty()) {
        load();
      }
      wanted = false;
    } catch (RuntimeException notYet) {
      LOG.info("The demo cannot be loaded yet: {}", notYet.getMessage());
    }
  }

  @Override
  public String kitName() {
    return KIT_NAME;
  }

  @Override
  public boolean loaded() {
    return shelf.kit(KIT_NAME).isPresent();
  }

  @Override
  public synchronized void load() {
    if (loaded()) {
      return;
    }
    // Everything is read before anything is written, so that a fault leaves the books alone.
    String kit = DemoFiles.KIT.text();
    kitFiles.readKit(DemoFiles.KIT.file(), kit);
    List<Receipt> receipts = stockFiles.readStock(DemoFiles.STOCK.file(), DemoFiles.STOCK.text());
    if (!inStock(receipts.get(0))) {
      stock.receive(receipts, MEMBER, "stock of the invented club");
    }
    LOANS.forEach(this::lend);
    shelf.keep(KIT_NAME, kit);
  }

  private boolean inStock(Receipt receipt) {
    return stock.lines().stream()
        .anyMatch(
            line ->
                line.goods().name().equals(receipt.goods().name())
                    && line.place().equals(receipt.place()));
  }

  private void lend(Loan loan) {
    Optional<StockLine> line =
        stock.lines().stream()
            .filter(each -> each.goods().name().equals(loan.goods()))
            .filter(each -> each.lent() == 0 && each.present() > 0)
            .findFirst();
    line.ifPresent(
        each ->
            stock.lend(
                each.id(),
                1,
                loan.member(),
                Optional.of(LocalDate.now(clock).plusDays(LOAN_DAYS))));
  }
}
