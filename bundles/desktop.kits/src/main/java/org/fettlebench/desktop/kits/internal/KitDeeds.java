package org.fettlebench.desktop.kits.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.fettlebench.club.KitShelf.KeptKit;
import org.fettlebench.desktop.Desk;
import org.fettlebench.kits.DemoClub;
import org.fettlebench.kits.FaultyFileException;

/** What a person can do with kits: bring in, check, take off the shelf; each can be undone. */
final class KitDeeds {
  private final Desk desk;
  private final KitBook book;
  private final Supplier<Optional<DemoClub>> demo;
  private final Watcher watcher;

  /** The page, told what to show next. */
  interface Watcher {
    /** Shows a kit; an empty name leaves the choice to the page. */
    void choose(String kit);

    /** Checks the kit that is shown again. */
    void check();

    /** Puts the joint that is shown on paper. */
    void card();

    /** Puts the kit that is shown on paper. */
    void report();

    /** Opens the seat of the joint that is shown on the page for seats. */
    void seat();

    /** Returns the name of the kit that is shown. */
    Optional<String> kit();
  }

  KitDeeds(Desk desk, KitBook book, Supplier<Optional<DemoClub>> demo, Watcher watcher) {
    this.desk = desk;
    this.book = book;
    this.demo = demo;
    this.watcher = watcher;
  }

  /** Asks for a kit file and brings it in. */
  void open() {
    FileDialog dialog = new FileDialog(desk.shell(), SWT.OPEN);
    dialog.setText("Open kit file");
    dialog.setFilterNames(new String[] {"Kit files (*.kit.toml)", "All files"});
    dialog.setFilterExtensions(new String[] {"*.kit.toml;*.toml", "*"});
    dialog.setFilterPath(desk.remembered(KitPage.ID, "folder", ""));
    String chosen = dialog.open();
    if (chosen != null) {
      desk.remember(KitPage.ID, "folder", dialog.getFilterPath());
      open(Path.of(chosen));
    }
  }

  /** What came of reading a file: the kit kept, or what is wrong. */
  private record Read(Optional<KitBook.Kept> kept, List<FaultyFileException.Fault> faults) {}

  /** Brings in a kit file, wholly or not at all. */
  void open(Path file) {
    String name = String.valueOf(file.getFileName());
    desk.work("Reading " + name, () -> read(file), read -> readDone(name, read));
  }

  private Read read(Path file) {
    try {
      return new Read(Optional.of(book.keep(file)), List.of());
    } catch (FaultyFileException faulty) {
      return new Read(Optional.empty(), faulty.faults());
    }
  }

  private void readDone(String file, Read read) {
    if (read.kept().isEmpty()) {
      FaultsWindow.open(desk, file, read.faults());
      return;
    }
    KitBook.Kept kept = read.kept().get();
    watcher.choose(kept.name());
    if (kept.before().isPresent()) {
      KeptKit before = kept.before().get();
      desk.say(
          kept.name() + " is on the shelf in place of the one of that name.",
          () -> putBack(before));
    } else {
      desk.say(kept.name() + " is on the shelf.", () -> takeAway(kept.name()));
    }
  }

  private void putBack(KeptKit kit) {
    desk.work(
        "Putting back " + kit.name(),
        () -> {
          book.putBack(kit);
          return kit.name();
        },
        watcher::choose);
  }

  private void takeAway(String name) {
    desk.work("Taking away " + name, () -> book.remove(name), gone -> watcher.choose(""));
  }

  /** Takes the kit that is shown off the shelf. */
  void remove() {
    watcher
        .kit()
        .ifPresent(name -> desk.work("Removing " + name, () -> book.remove(name), this::removed));
  }

  private void removed(Optional<KeptKit> gone) {
    watcher.choose("");
    gone.ifPresent(kit -> desk.say(kit.name() + " is off the shelf.", () -> putBack(kit)));
  }

  /** Loads the demo club and shows its kit. */
  void lookRound() {
    demo.get()
        .ifPresent(
            club ->
                desk.work(
                    "Loading the demo club",
                    () -> {
                      club.load();
                      return club.kitName();
                    },
                    watcher::choose));
  }

  KitHead.Deeds forHead(Consumer<Boolean> shortList) {
    return new KitHead.Deeds() {
      @Override
      public void choose(String kit) {
        watcher.choose(kit);
      }

      @Override
      public void open() {
        KitDeeds.this.open();
      }

      @Override
      public void check() {
        watcher.check();
      }

      @Override
      public void shortList(boolean shown) {
        shortList.accept(shown);
      }

      @Override
      public void card() {
        watcher.card();
      }

      @Override
      public void report() {
        watcher.report();
      }

      @Override
      public void seat() {
        watcher.seat();
      }

      @Override
      public void remove() {
        KitDeeds.this.remove();
      }
    };
  }
}
