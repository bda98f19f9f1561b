package org.fettlebench.desktop.kits.internal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.FileDialog;
import org.fettlebench.desktop.Desk;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.KitReport;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.paper.BenchCards;

/** Puts a joint or a kit on paper: a PDF file, opened to be printed. */
final class Papers {
  private final Desk desk;
  private final Supplier<Optional<BenchCards>> cards;
  private final Consumer<Path> opener;

  Papers(Desk desk, Supplier<Optional<BenchCards>> cards) {
    this(desk, cards, file -> Program.launch(file.toString()));
  }

  Papers(Desk desk, Supplier<Optional<BenchCards>> cards, Consumer<Path> opener) {
    this.desk = desk;
    this.cards = cards;
    this.opener = opener;
  }

  /** What writes a paper. */
  private interface Writing {
    void to(BenchCards cards, OutputStream pdf) throws IOException;
  }

  /** Asks where to and writes the card of a joint. */
  void card(KitReport report, JointReport joint) {
    ask("Bench card", joint.joint().name()).ifPresent(file -> card(report, joint, file));
  }

  void card(KitReport report, JointReport joint, Path file) {
    LengthUnit unit = desk.unit();
    write(file, (service, pdf) -> service.jointCard(report, joint, unit, pdf));
  }

  /** Asks where to and writes the report of the kit. */
  void report(KitReport report) {
    ask("Report of the kit", report.kit().name()).ifPresent(file -> report(report, file));
  }

  void report(KitReport report, Path file) {
    LengthUnit unit = desk.unit();
    write(file, (service, pdf) -> service.kitReport(report, unit, pdf));
  }

  private Optional<Path> ask(String title, String name) {
    if (cards.get().isEmpty()) {
      desk.complain("Nothing that writes bench cards is installed; see the page Modules.");
      return Optional.empty();
    }
    FileDialog dialog = new FileDialog(desk.shell(), SWT.SAVE);
    dialog.setText(title + " as PDF");
    dialog.setFilterExtensions(new String[] {"*.pdf"});
    dialog.setFilterPath(desk.remembered(KitPage.ID, "paper-folder", ""));
    dialog.setFileName(fileName(name));
    dialog.setOverwrite(true);
    Optional<String> chosen = Optional.ofNullable(dialog.open());
    chosen.ifPresent(file -> desk.remember(KitPage.ID, "paper-folder", dialog.getFilterPath()));
    return chosen.map(file -> file.endsWith(".pdf") ? file : file + ".pdf").map(Path::of);
  }

  /** Returns a name that every file system takes. */
  static String fileName(String name) {
    return name.strip().replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "") + ".pdf";
  }

  private void write(Path file, Writing writing) {
    BenchCards service = cards.get().orElseThrow();
    desk.work(
        "Writing " + file.getFileName(),
        () -> {
          // Whole in memory first, so that a failure leaves no half a file.
          ByteArrayOutputStream bytes = new ByteArrayOutputStream();
          writing.to(service, bytes);
          return Files.write(file, bytes.toByteArray());
        },
        written -> {
          desk.say(written + " is written; it is opened to be looked at and printed.");
          opener.accept(written);
        });
  }
}
