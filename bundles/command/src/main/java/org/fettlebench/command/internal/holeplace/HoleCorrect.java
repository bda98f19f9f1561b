package org.fettlebench.command.internal.holeplace;

import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.PaperFile;
import org.fettlebench.drawing.SvgWriter;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.Verdict;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.correct.CorrectionAnswer.Outcome;
import org.fettlebench.holes.correct.CorrectionQuestion;
import org.fettlebench.holes.correct.CorrectionQuestion.Around;
import org.fettlebench.holes.correct.CorrectionQuestion.Found;
import org.fettlebench.holes.correct.CorrectionQuestion.Rules;
import org.fettlebench.holes.correct.CorrectionQuestion.Tools;
import org.fettlebench.holes.correct.Corrections;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.Point;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Says what to do about a hole that is drilled and was measured. */
@Component(property = Commands.WORDS + "=hole correct")
public final class HoleCorrect implements Command {
  private static final Usage USAGE =
      Usage.of(
              "hole correct",
              "Says which side of a hole that is out to file, how much, and what else is possible.",
              "hole correct gland.seat.toml --drilled 5/32 --at \"5.1 mm, 4.65 mm\" --within \"0.05 mm\"")
          .needs(
              Bench.FILE, "a seat file; its measured hole is taken if none is said; - for piped in")
          .option("--drilled", "SIZE", "the hole as it is: a length or a drill")
          .option("--at", "X,Y", "its centre as measured, two lengths")
          .option("--within", "LENGTH", "how far that may be wrong, radius, 95 %")
          .option("--finish", "SIZE", "the hole in the end; of the seat file if not said")
          .option(
              Habits.CLEAN_UP,
              "LENGTH",
              "metal left per side for the last drill; 0.1 mm if not said")
          .option(
              Habits.FILING, "LENGTH", "how far filing may end from its place; 0.1 mm if not said")
          .option(Habits.WALL, "LENGTH", "least wall of a plug; 1 mm if not said")
          .option(
              Bench.FILES,
              "SIZES",
              "round files at hand, such as \"2 mm, 1/8\"; of the stock if not said")
          .flag("--mate-open", "the mating hole is not drilled yet and may follow")
          .option(
              PlacePapers.SVG, "FILE", "write the face to scale there; the hole as FILE-hole.svg")
          .option(PlacePapers.CARD, "FILE", "write the correction card (PDF) there");

  private final Bench bench;
  private final Corrections corrections;
  private final PlacePapers papers;

  /** Made by the framework. */
  @Activate
  public HoleCorrect(
      @Reference Bench bench, @Reference Corrections corrections, @Reference PlacePapers papers) {
    this.bench = bench;
    this.corrections = corrections;
    this.papers = papers;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    SeatFile file = bench.seat(call, Bench.FILE);
    SeatQuestion seat = file.question();
    CorrectionAnswer answer =
        corrections.correct(
            new CorrectionQuestion(
                seat.seat().intended(),
                found(call, file),
                finish(call, seat),
                new Rules(
                    Habits.cleanUp(call),
                    Habits.filing(call),
                    Habits.wallMm(call),
                    Habits.means(call, Habits.WALL)),
                new Tools(bench.heldDrills(), bench.roundFiles(call), bench.catalogue()),
                new Around(Optional.of(seat), bench.otherHeads(seat), call.on("--mate-open"))));
    String name = seat.seat().name();
    String written = write(call, name, answer);
    Outcome outcome = answer.outcome();
    return Reply.of(
        outcome == Outcome.PAST_CURE || outcome == Outcome.FILE_IN_DOUBT || foulsStill(answer),
        CorrectionText.of(name, answer, call.unit()) + written,
        CorrectionData.of(name, answer));
  }

  /** A hole in its right place does not help a head for which that place is wrong. */
  private static boolean foulsStill(CorrectionAnswer answer) {
    return answer
        .filing()
        .flatMap(CorrectionAnswer.Filing::after)
        .or(answer::asIs)
        .filter(seat -> seat.verdict() == Verdict.FOULS)
        .isPresent();
  }

  private Found found(Call call, SeatFile file) {
    Optional<SeatFile.Drilled> known = file.hole().drilled();
    Point centre =
        call.option("--at")
            .map(HoleCorrect::point)
            .or(() -> known.map(SeatFile.Drilled::centre))
            .orElseThrow(
                () ->
                    new CommandException(
                        "nothing says where the hole is; add --at \"X, Y\", or measure it with"
                            + " \"hole measure ... --save FILE\" and name that file"));
    double drilled =
        call.option("--drilled")
            .map(said -> bench.drill(call, "--drilled").diameter().millimetres())
            .or(() -> known.map(SeatFile.Drilled::diameterMm))
            .orElseThrow(
                () ->
                    new CommandException(
                        "nothing says how large the hole is now; add --drilled, such as"
                            + " --drilled 5/32"));
    double within =
        call.length("--within")
            .map(Length::millimetres)
            .or(() -> known.map(SeatFile.Drilled::withinMm))
            .orElseThrow(
                () ->
                    new CommandException(
                        "nothing says how well the hole was measured; add --within, such as"
                            + " --within \"0.05 mm\""));
    return new Found(centre, drilled, within);
  }

  private static Point point(String typed) {
    String[] parts = typed.split(",", -1);
    if (parts.length != 2) {
      throw new CommandException(
          "\"" + typed + "\" is no place; give two lengths, such as --at \"5.1 mm, 4.65 mm\"");
    }
    return new Point(
        LengthReader.read(parts[0].strip()).millimetres(),
        LengthReader.read(parts[1].strip()).millimetres());
  }

  private double finish(Call call, SeatQuestion seat) {
    return call.option("--finish")
        .map(said -> bench.drill(call, "--finish").diameter().millimetres())
        .orElse(seat.holeDiameterMm());
  }

  private String write(Call call, String name, CorrectionAnswer answer) {
    if (call.option(PlacePapers.SVG).isPresent()) {
      java.nio.file.Path face = call.file(PlacePapers.SVG);
      String hole = face.getFileName().toString().replaceFirst("(\\.svg)?$", "-hole.svg");
      PaperFile.write(
          face,
          SvgWriter.write(
              corrections.drawFace(answer, call.unit()),
              HoleMeasure.WIDTH_MM,
              HoleMeasure.HEIGHT_MM));
      PaperFile.write(
          face.resolveSibling(hole),
          SvgWriter.write(
              corrections.drawHole(answer, call.unit()),
              HoleMeasure.WIDTH_MM,
              HoleMeasure.HEIGHT_MM));
    }
    return papers.correction(call, name, answer).map(line -> "\n" + line).orElse("");
  }
}
