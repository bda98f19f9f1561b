package org.fettlebench.desktop.seats.internal;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.program.Program;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.Copying;
import org.fettlebench.desktop.widgets.PageFiles;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.SvgWriter;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.kits.FaultyFileException;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.measure.LengthUnit;

/** Files, pictures, paper and clipboard. */
final class SeatDeeds {
  private static final double SVG_WIDTH_MM = 240;
  private static final double SVG_HEIGHT_MM = 170;

  private final Desk desk;
  private final Bench bench;
  private final SeatBook book;
  private final KitFiles files;
  private final PageFiles out;
  private final Papers papers;
  private Supplier<ImageData> picture = () -> new ImageData(1, 1, 1, null);
  private Supplier<Optional<Drawing>> drawing = Optional::empty;
  private Supplier<ViewChoice> view = () -> ViewChoice.SEAT;

  SeatDeeds(Desk desk, Bench bench, SeatBook book, KitFiles files, Papers papers) {
    this.desk = desk;
    this.bench = bench;
    this.book = book;
    this.files = files;
    this.out = new PageFiles(desk, SeatPage.ID);
    this.papers = papers;
  }

  /** Says what is drawn, for pictures of it. */
  void draws(Supplier<Optional<Drawing>> what, Supplier<ImageData> asPicture) {
    drawing = what;
    picture = asPicture;
  }

  /** Says which view is shown, since the card goes with it. */
  void views(Supplier<ViewChoice> now) {
    view = now;
  }

  /** Begins anew; Undo brings the old work back. */
  void fresh() {
    if (bench.apply(Change.of("begun anew", sketch -> Sketch.EMPTY))) {
      desk.say("A new seat is begun.", bench.undoOfLast());
    }
  }

  /** Shows the invented example; Undo brings the old work back. */
  void example() {
    String text = Example.text();
    put("the example", SeatText.sketch(files.readSeatFile(Example.NAME, text)));
  }

  private void put(String what, Sketch sketch) {
    bench.apply(Change.of(what + " opened", before -> sketch));
    desk.say(SeatWords.upper(what) + " is open.", bench.undoOfLast());
  }

  /** Asks for a seat file and opens it. */
  void open() {
    out.askOpen("Open seat file", "*.seat.toml;*.toml").ifPresent(this::open);
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
      return new Read(Optional.of(SeatText.sketch(files.readSeatFile(name, files.text(file)))), "");
    } catch (FaultyFileException faulty) {
      String all =
          faulty.faults().stream()
              .map(FaultyFileException.Fault::toString)
              .collect(Collectors.joining("\n"));
      return new Read(Optional.empty(), name + " cannot be used.\n" + all);
    }
  }

  /** Asks where to and saves the seat. */
  void save() {
    if (bench.reply().answer().isEmpty()) {
      desk.complain("There is nothing whole to save yet. " + bench.reply().next());
      return;
    }
    out.askSave("Save seat file", fileName(), ".seat.toml").ifPresent(this::save);
  }

  void save(Path file) {
    bench
        .reply()
        .answer()
        .ifPresent(
            answer -> {
              String text =
                  files.writeSeat(SeatText.file(bench.sketch(), answer, method()), desk.unit());
              out.write(file, text.getBytes(StandardCharsets.UTF_8));
            });
  }

  private String method() {
    return book.method(bench.sketch()).map(HoleMethod::id).orElse("");
  }

  private String fileName() {
    return PageFiles.name(bench.sketch().name(), "seat");
  }

  /** Asks where to and writes the drawing as a picture: PNG, SVG or PDF by the name's ending. */
  void picture() {
    if (drawing.get().isEmpty()) {
      desk.complain("There is no drawing yet. " + bench.reply().next());
      return;
    }
    out.askPicture(fileName(), "One page for print").ifPresent(this::picture);
  }

  void picture(Path file) {
    String kind = PageFiles.pictureEnding(file.toString()).orElse(".svg");
    if (kind.equals(".pdf")) {
      card(file);
    } else if (kind.equals(".png")) {
      out.write(file, PageFiles.png(picture.get()));
    } else {
      String svg =
          SvgWriter.toScale(drawing.get().orElseThrow(), SVG_WIDTH_MM, SVG_HEIGHT_MM, desk.unit());
      out.write(file, svg.getBytes(StandardCharsets.UTF_8));
    }
  }

  private Optional<Papers.Card> wanted() {
    return bench
        .reply()
        .answer()
        .flatMap(answer -> papers.card(bench.sketch(), answer, view.get(), desk.unit()));
  }

  /** Asks where to and writes the card for the bench. */
  void card() {
    Optional<Papers.Card> card = wanted();
    if (bench.reply().answer().isEmpty()) {
      desk.complain("There is no answer to put on a card yet. " + bench.reply().next());
    } else if (card.isEmpty()) {
      desk.complain(
          "There is no such card yet: see what stands below the drawing, and on the page Modules"
              + " whether something that writes cards is installed.");
    } else {
      out.askSave(
              SeatWords.upper(card.get().name()) + " as PDF",
              fileName() + card.get().ending(),
              ".pdf")
          .ifPresent(file -> card(file, () -> Program.launch(file.toString())));
    }
  }

  void card(Path file) {
    card(file, () -> {});
  }

  private void card(Path file, Runnable then) {
    Optional<Papers.Card> card = wanted();
    if (card.isEmpty()) {
      desk.complain("There is nothing to put on a card yet. " + bench.reply().next());
      return;
    }
    out.write(file, card.get().bytes(), "is written: " + card.get().name(), then);
  }

  /** Copies the answer and its figures as text. */
  void copy() {
    LengthUnit unit = desk.unit();
    Optional<SeatAnswer> answer = bench.reply().answer();
    String words =
        answer.map(said -> papers.text(bench.sketch(), said, unit)).orElse(bench.reply().next());
    Copying.text(desk.shell().getDisplay(), words);
    desk.say("Figures copied.");
  }
}
