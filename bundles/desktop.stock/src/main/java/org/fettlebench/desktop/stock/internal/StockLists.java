package org.fettlebench.desktop.stock.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.kits.FaultyFileException;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.StockFiles;

/** Lists as files: received whole or not at all, and written for other programs. */
final class StockLists {
  private static final String[] EXTENSIONS = {"*.csv", "*.*"};
  private static final String[] NAMES = {"Lists (*.csv)", "All files"};

  private final KitFiles texts;
  private final StockFiles files;
  private final StockDeeds deeds;

  StockLists(KitFiles texts, StockFiles files, StockDeeds deeds) {
    this.texts = texts;
    this.files = files;
    this.deeds = deeds;
  }

  /** What came of reading a list: an outcome, or what is wrong with the file. */
  record Taken(String file, Optional<Outcome> outcome, List<FaultyFileException.Fault> faults) {}

  static Optional<Path> askToOpen(Shell shell) {
    return ask(shell, SWT.OPEN, "Receive a list", "");
  }

  static Optional<Path> askToSave(Shell shell) {
    return ask(shell, SWT.SAVE, "Export the list", "stock.csv");
  }

  private static Optional<Path> ask(Shell shell, int style, String title, String name) {
    FileDialog dialog = new FileDialog(shell, style);
    dialog.setText(title);
    dialog.setFilterExtensions(EXTENSIONS);
    dialog.setFilterNames(NAMES);
    dialog.setFileName(name);
    dialog.setOverwrite(true);
    return Optional.ofNullable(dialog.open()).map(Path::of);
  }

  /** Receives everything on a list, or says everything that is wrong with it. */
  Taken receive(Path file, String member) {
    String name = String.valueOf(file.getFileName());
    try {
      List<Receipt> receipts = files.readStock(name, texts.text(file));
      return new Taken(
          name, Optional.of(deeds.receive(receipts, member, "from the list " + name)), List.of());
    } catch (FaultyFileException faulty) {
      return new Taken(name, Optional.empty(), faulty.faults());
    }
  }

  /** Writes lines as a list; returns the sentence that says so. */
  String export(List<StockLine> lines, Path file) throws IOException {
    Files.writeString(file, files.write(lines), StandardCharsets.UTF_8);
    long written = lines.stream().filter(line -> line.quantity() > 0).count();
    return Figures.count(written, "line", "lines") + " written to " + file + ".";
  }
}
