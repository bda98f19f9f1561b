package org.fettlebench.desktop.castings.internal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.FileDialog;
import org.fettlebench.castings.Placing;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.Copying;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.SvgWriter;
import org.fettlebench.kits.CastingFile;
import org.fettlebench.kits.FaultyFileException;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.paper.CastingCards;

/** Files, pictures, paper and clipboard. */
final class Deeds {
  private static final double SVG_WIDTH_MM = 240;
  private static final double SVG_HEIGHT_MM = 170;

  private final Desk desk;
  private final Bench bench;
  private final KitFiles files;
  private final Supplier<Optional<CastingCards>> cards;
  private Supplier<ImageData> picture = () -> new ImageData(1, 1, 1, null);
  private Supplier<Optional<Drawing>> drawing = Optional::empty;

  Deeds(Desk desk, Bench bench, KitFiles files, Supplier<Optional<CastingCards>> cards) {
    this.desk = desk;
    this.bench = bench;
    this.files = files;
    this.cards = cards;
  }

  /** Says what is drawn, for pictures of it. */
  void draws(Supplier<Optional<Drawing>> what, Supplier<ImageData> asPicture) {
    drawing = what;
    picture = asPicture;
  }

  /** Begins anew; Undo brings the old work back. */
  void fresh() {
    if (bench.apply(Change.of("begun anew", sketch -> Sketch.EMPTY))) {
      desk.say("A new casting is begun.", bench.undoOfLast());
    }
  }

  /** Shows the invented example; Undo brings the old work back. */
  void example() {
    put("The example", CastingText.sketch(files.readCasting(Example.NAME, Example.text())));
  }

  private void put(String what, Sketch sketch) {
    bench.apply(Change.of(what + " opened", before -> sketch));
    bench.choose(0);
    desk.say(what + " is open.", bench.undoOfLast());
  }

  /** Asks for a casting file and opens it. */
  void open() {
    FileDialog dialog = dialog(SWT.OPEN, "Open casting file", "*.casting.toml;*.toml");
    Optional.ofNullable(dialog.open()).map(Path::of).ifPresent(this::open);
  }

  /** What came of reading a file. */
  private record Read(Optional<Sketch> sketch, String trouble) {}

  void open(Path file) {
    String name = String.valueOf(file.getFileName());
    desk.work(
        "Reading " + name,
        () -> read(name, file),
        read -> {
          read.sketch().ifPresent(sketch -> put(name, sketch));
          if (read.sketch().isEmpty()) {
            desk.complain(read.trouble());
          }
        });
  }

  private Read read(String name, Path file) {
    try {
      CastingFile casting = files.readCasting(name, files.text(file));
      return new Read(Optional.of(CastingText.sketch(casting)), "");
    } catch (FaultyFileException faulty) {
      String all =
          faulty.faults().stream()
              .map(FaultyFileException.Fault::toString)
              .collect(Collectors.joining("\n"));
      return new Read(Optional.empty(), name + " cannot be used.\n" + all);
    }
  }

  /** Returns the answer; says what it still lacks when there is none. */
  private Optional<Placing> answer(String what) {
    Optional<Placing> answer = bench.reply().answer();
    if (answer.isEmpty()) {
      desk.complain("There is nothing whole to " + what + " yet. " + bench.reply().next());
    }
    return answer;
  }

  /** Asks where to and saves the casting. */
  void save() {
    answer("save").flatMap(each -> ask("Save casting file", ".casting.toml")).ifPresent(this::save);
  }

  void save(Path file) {
    answer("save")
        .ifPresent(
            placing -> {
              CastingFile casting =
                  new CastingFile(placing.casting(), bench.sketch().holdsPressure());
              String text = files.writeCasting(casting, desk.unit());
              write(file, text.getBytes(StandardCharsets.UTF_8), "is written");
            });
  }

  private Optional<Path> ask(String title, String ending) {
    FileDialog dialog = dialog(SWT.SAVE, title, "*" + ending);
    dialog.setFileName(fileName(ending));
    String last = ending.substring(ending.lastIndexOf('.'));
    return Optional.ofNullable(dialog.open())
        .map(file -> file.endsWith(last) ? file : file + ending)
        .map(Path::of);
  }

  private FileDialog dialog(int style, String title, String ending) {
    FileDialog dialog = new FileDialog(desk.shell(), style);
    dialog.setText(title);
    dialog.setFilterExtensions(ending.split(","));
    dialog.setFilterPath(desk.remembered(CastingPage.ID, "folder", ""));
    dialog.setOverwrite(true);
    return dialog;
  }

  private String fileName(String ending) {
    String name = bench.sketch().name().isBlank() ? "casting" : bench.sketch().name();
    return name.strip().replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "") + ending;
  }

  /** Asks where to and writes the drawing as a picture: SVG, PNG or PDF by the name's ending. */
  void picture() {
    if (drawing.get().isEmpty()) {
      desk.complain("There is no drawing yet. " + bench.reply().next());
      return;
    }
    FileDialog dialog = dialog(SWT.SAVE, "Save the drawing", "*.svg,*.png,*.pdf");
    dialog.setFilterNames(
        new String[] {"Drawing to scale (*.svg)", "Picture (*.png)", "All views, A4 (*.pdf)"});
    dialog.setFileName(fileName(".svg"));
    Optional<String> chosen = Optional.ofNullable(dialog.open());
    String[] endings = {".svg", ".png", ".pdf"};
    int filter = Math.max(0, dialog.getFilterIndex());
    chosen
        .map(file -> file.matches("(?i).*\\.(svg|png|pdf)") ? file : file + endings[filter])
        .map(Path::of)
        .ifPresent(this::picture);
  }

  void picture(Path file) {
    String name = file.toString().toLowerCase(Locale.ROOT);
    if (name.endsWith(".pdf")) {
      bench
          .reply()
          .placing()
          .ifPresent(
              placing -> paper(file, (service, out) -> service.views(placing, desk.unit(), out)));
    } else if (name.endsWith(".png")) {
      ImageLoader loader = new ImageLoader();
      loader.data = new ImageData[] {picture.get()};
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      loader.save(bytes, SWT.IMAGE_PNG);
      write(file, bytes.toByteArray(), "is written");
    } else {
      String svg = SvgWriter.write(drawing.get().orElseThrow(), SVG_WIDTH_MM, SVG_HEIGHT_MM);
      write(file, svg.getBytes(StandardCharsets.UTF_8), "is written");
    }
  }

  /** Asks where to and writes the marking-out card for the bench. */
  void card() {
    answer("put on a card")
        .flatMap(each -> ask("Marking-out card as PDF", ".pdf"))
        .ifPresent(
            file -> {
              card(file);
              Program.launch(file.toString());
            });
  }

  void card(Path file) {
    answer("put on a card")
        .ifPresent(
            placing ->
                paper(
                    file,
                    (service, out) ->
                        service.card(placing, bench.sketch().holdsPressure(), desk.unit(), out)));
  }

  /** Something that is put on paper. */
  @FunctionalInterface
  private interface Paper {
    void on(CastingCards service, ByteArrayOutputStream out) throws IOException;
  }

  private void paper(Path file, Paper what) {
    Optional<CastingCards> service = cards.get();
    if (service.isEmpty()) {
      desk.complain("Nothing that writes cards is installed; see the page Modules.");
      return;
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      what.on(service.get(), bytes);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    write(file, bytes.toByteArray(), "is written, one page to print");
  }

  private void write(Path file, byte[] bytes, String what) {
    desk.work(
        "Writing " + file.getFileName(),
        () -> Files.write(file, bytes),
        written -> {
          Optional.ofNullable(written.toAbsolutePath().getParent())
              .ifPresent(folder -> desk.remember(CastingPage.ID, "folder", folder.toString()));
          desk.say(written + " " + what + ".");
        });
  }

  /** Copies the table with its answers as text. */
  void copy() {
    String text = TableText.of(bench.sketch(), bench.reply(), desk.unit());
    Copying.text(desk.shell().getDisplay(), text);
    desk.say("Table copied.");
  }
}
