package org.fettlebench.desktop.kits.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.KitShelf;
import org.fettlebench.club.KitShelf.KeptKit;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.club.Stock;
import org.fettlebench.kits.FaultyFileException;
import org.fettlebench.kits.Holdings;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.KitCheck;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.KitReport;
import org.fettlebench.modules.Modules;

/** The kits on the shelf and what the check says of one. Knows no window; for any thread. */
final class KitBook {
  private final KitFiles files;
  private final KitCheck check;
  private final Stock stock;
  private final MeasuredErrors errors;
  private final KitShelf shelf;
  private final Modules modules;

  KitBook(
      KitFiles files,
      KitCheck check,
      Stock stock,
      MeasuredErrors errors,
      KitShelf shelf,
      Modules modules) {
    this.files = files;
    this.check = check;
    this.stock = stock;
    this.errors = errors;
    this.shelf = shelf;
    this.modules = modules;
  }

  /**
   * What a page shows.
   *
   * @param kits names of the kits on the shelf, newest first
   * @param checked the kit that was looked at; empty when the shelf is
   */
  record Shown(List<String> kits, Optional<Checked> checked) {
    /** Copies what could change. */
    Shown {
      kits = List.copyOf(kits);
    }

    static final Shown EMPTY = new Shown(List.of(), Optional.empty());

    Optional<KitReport> report() {
      return checked.flatMap(Checked::report);
    }
  }

  /**
   * A kit that was looked at.
   *
   * @param kit its name on the shelf
   * @param report what the check says; empty when the file cannot be used any more
   * @param faults why it cannot: a module that knew its threads may have gone
   * @param of what all this was made of, to know whether it still holds
   */
  record Checked(
      String kit, Optional<KitReport> report, List<FaultyFileException.Fault> faults, Basis of) {}

  /** What a report was made of. */
  record Basis(String text, long stockRevision, List<MeasuredError> errors, long modulesRevision) {}

  /**
   * Looks at a kit, the newest if the one wanted is not on the shelf. What was checked before is
   * taken again as long as neither the kit, nor the stock, nor the modules changed.
   */
  Shown look(String wanted, Shown before) {
    List<KeptKit> kept = shelf.kits();
    List<String> names = kept.stream().map(KeptKit::name).toList();
    Optional<KeptKit> chosen =
        kept.stream()
            .filter(kit -> kit.name().equals(wanted))
            .findFirst()
            .or(() -> kept.stream().findFirst());
    return new Shown(names, chosen.map(kit -> looked(kit, before)));
  }

  private Checked looked(KeptKit kit, Shown before) {
    // Asked before the stock is read: a change in between is then seen at the next look.
    Basis basis = new Basis(kit.text(), stock.revision(), errors.all(), modules.revision());
    return before
        .checked()
        .filter(old -> old.kit().equals(kit.name()) && old.of().equals(basis))
        .orElseGet(() -> checked(kit, basis));
  }

  private Checked checked(KeptKit kept, Basis basis) {
    try {
      Kit kit = files.readKit(kept.name(), kept.text());
      KitReport report = check.check(kit, new Holdings(stock.lines(), basis.errors()));
      return new Checked(kept.name(), Optional.of(report), List.of(), basis);
    } catch (FaultyFileException faulty) {
      return new Checked(kept.name(), Optional.empty(), faulty.faults(), basis);
    }
  }

  /**
   * Puts a kit file on the shelf.
   *
   * @throws FaultyFileException with every fault; nothing is kept then
   */
  Kept keep(Path file) {
    String text = files.text(file);
    Kit kit = files.readKit(String.valueOf(file.getFileName()), text);
    return new Kept(kit.name(), shelf.keep(kit.name(), text));
  }

  /** A kit put on the shelf, and the one of that name that stood there. */
  record Kept(String name, Optional<KeptKit> before) {}

  /** Takes a kit off the shelf; returns it if it was there. */
  Optional<KeptKit> remove(String name) {
    return shelf.remove(name);
  }

  /** Puts a kit back that was taken off or replaced. */
  void putBack(KeptKit kit) {
    shelf.keep(kit.name(), kit.text());
  }
}
