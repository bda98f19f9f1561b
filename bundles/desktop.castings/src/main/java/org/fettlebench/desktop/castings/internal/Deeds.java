package org.fettlebench.desktop.castings.internal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.program.Program;
import org.fettlebench.castings.Placing;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.Copying;
import org.fettlebench.desktop.widgets.PageFiles;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.SvgWriter;
import org.fettlebench.kits.CastingFile;
import org.fettlebench.kits.FaultyFileException;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.paper.CastingCards;

/** Files, pictures, paper and clipboard. */
final class Deeds {
  private static final double SVG_WIDTH_MM = 240;
  private static final double SVG_HEIGHT_MM = 170;

  private final Desk desk;
  private final Bench bench;
  private final KitFiles files;
  private final PageFiles out;
  private final Supplier<Optional<CastingCards>> cards;
  private Supplier<ImageData> picture = () -> new ImageData(1, 1, 1, null);
  private Supplier<Optional<Drawing>> drawing = Optional::empty;

  Deeds(Desk desk, Bench bench, KitFiles files, Supplier<Optional<CastingCards>> cards) {
    this.desk = desk;
    this.bench = bench;
    this.files = files;
    this.out = new PageFiles(desk, CastingPage.ID);
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
    out.askOpen("Open casting file", "*.casting.toml;*.toml").ifPresent(this::open);
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
    answer("save")
        .flatMap(each -> out.askSave("Save casting file", fileName(), ".casting.toml"))
        .ifPresent(this::save);
  }

  void save(Path file) {
    answer("save")
        .ifPresent(
            placing -> {
              CastingFile casting =
                  new CastingFile(placing.casting(), bench.sketch().holdsPressure());
              String text = files.writeCasting(casting, desk.unit());
              out.write(file, text.getBytes(StandardCharsets.UTF_8));
            });
  }

  private String fileName() {
    return PageFiles.name(bench.sketch().name(), "casting");
  }

  /** Asks where to and writes the drawing as a picture: SVG, PNG or PDF by the name's ending. */
  void picture() {
    if (drawing.get().isEmpty()) {
      desk.complain("There is no drawing yet. " + bench.reply().next());
      return;
    }
    out.askPicture(fileName(), "All views, A4").ifPresent(this::picture);
  }

  void picture(Path file) {
    String kind = PageFiles.pictureEnding(file.toString()).orElse(".svg");
    LengthUnit unit = desk.unit();
    if (kind.equals(".pdf")) {
      bench
          .reply()
          .placing()
          .ifPresent(
              placing -> paper(file, (service, to) -> service.views(placing, unit, to), () -> {}));
    } else if (kind.equals(".png")) {
      out.write(file, PageFiles.png(picture.get()));
    } else {
      String svg =
          SvgWriter.toScale(drawing.get().orElseThrow(), SVG_WIDTH_MM, SVG_HEIGHT_MM, unit);
      out.write(file, svg.getBytes(StandardCharsets.UTF_8));
    }
  }

  /** Asks where to and writes the marking-out card for the bench. */
  void card() {
    answer("put on a card")
        .flatMap(each -> out.askSave("Marking-out card as PDF", fileName(), ".pdf"))
        .ifPresent(file -> card(file, () -> Program.launch(file.toString())));
  }

  void card(Path file) {
    card(file, () -> {});
  }

  private void card(Path file, Runnable then) {
    boolean pressure = bench.sketch().holdsPressure();
    LengthUnit unit = desk.unit();
    answer("put on a card")
        .ifPresent(
            placing ->
                paper(file, (service, to) -> service.card(placing, pressure, unit, to), then));
  }

  /** Something that is put on paper. */
  @FunctionalInterface
  private interface Paper {
    void on(CastingCards service, ByteArrayOutputStream to) throws IOException;
  }

  private void paper(Path file, Paper what, Runnable then) {
    Optional<CastingCards> service = cards.get();
    if (service.isEmpty()) {
      desk.complain("Nothing that writes cards is installed; see the page Modules.");
      return;
    }
    out.write(
        file,
        () -> {
          ByteArrayOutputStream bytes = new ByteArrayOutputStream();
          what.on(service.get(), bytes);
          return bytes.toByteArray();
        },
        "is written, one page to print",
        then);
  }

  /** Copies the table with its answers as text. */
  void copy() {
    String text = TableText.of(bench.sketch(), bench.reply(), desk.unit());
    Copying.text(desk.shell().getDisplay(), text);
    desk.say("Table copied.");
  }
}
