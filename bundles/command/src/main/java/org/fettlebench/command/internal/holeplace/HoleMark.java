package org.fettlebench.command.internal.holeplace;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Cautions;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.PaperFile;
import org.fettlebench.command.internal.method.Placings;
import org.fettlebench.drawing.SvgWriter;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.Verdict;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.holes.otherface.FaceMark;
import org.fettlebench.holes.otherface.FaceMark.EdgeDistance;
import org.fettlebench.holes.otherface.MarkQuestion;
import org.fettlebench.holes.otherface.OtherFaces;
import org.fettlebench.holes.otherface.Turn;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Says where to mark a hole that is drilled from the other face. */
@Component(property = Commands.WORDS + "=hole mark")
public final class HoleMark implements Command {
  private static final Usage USAGE =
      Placings.options(
          Usage.of(
                  "hole mark",
                  "Says where to mark the far face for a hole that must come out right on the seat.",
                  "hole mark lug.seat.toml --turn sideways --depth \"12 mm\"")
              .needs(Bench.FILE, "a seat file with an underside; - for piped in")
              .option(
                  "--turn",
                  "WAY",
                  "how you turn the part over: sideways (as a page of a book) or endways (as a sheet of a notepad)")
              .option("--depth", "LENGTH", "from face to face")
              .option(
                  "--wander",
                  "LENGTH",
                  "how far the drill may wander over the depth; not counted if not said")
              .option("--drill", "SIZE", "the drill that comes out; of the seat file if not said")
              .option("--method", "ID", "how the mark is placed; of the seat file if not said")
              .option(
                  Bench.CONFIDENCE,
                  "P",
                  "chance asked that it lands so; of the seat file if not said")
              .option(
                  "--edges",
                  "N,N",
                  "two edges to mark from, n being the one from corner n to the next")
              .option(PlacePapers.SVG, "FILE", "write the far face to scale there")
              .option(PlacePapers.CARD, "FILE", "write the marking-out card (PDF) there"));

  private final Bench bench;
  private final OtherFaces faces;
  private final PlacePapers papers;

  /** Made by the framework. */
  @Activate
  public HoleMark(
      @Reference Bench bench, @Reference OtherFaces faces, @Reference PlacePapers papers) {
    this.bench = bench;
    this.faces = faces;
    this.papers = papers;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    SeatFile file = bench.seat(call, Bench.FILE);
    MethodEstimate method =
        bench.method(call, call.option("--method").orElse(file.hole().method()));
    FaceMark mark = faces.mark(question(call, file, method));
    if (call.option(PlacePapers.SVG).isPresent()) {
      PaperFile.write(
          call.file(PlacePapers.SVG),
          SvgWriter.write(
              faces.draw(mark, call.unit()), HoleMeasure.WIDTH_MM, HoleMeasure.HEIGHT_MM));
    }
    String written = papers.marking(call, mark).map(line -> "\n" + line).orElse("");
    boolean wanting =
        mark.metalMm() < 0 || mark.above().filter(s -> s.verdict() == Verdict.FOULS).isPresent();
    return Reply.of(wanting, text(mark, method, call.unit()) + written, data(mark, method));
  }

  private MarkQuestion question(Call call, SeatFile file, MethodEstimate method) {
    SeatQuestion question = file.question();
    Seat seat = question.seat();
    Outline far =
        seat.underside()
            .orElseThrow(
                () ->
                    new CommandException(
                        seat.name()
                            + ": the file does not say what the far face is like; add underside or"
                            + " underside-stations, as seen from above (the same as the outline"
                            + " when the sides are upright)"));
    double confidence = bench.confidence(call, file.hole().confidence());
    return new MarkQuestion(
        seat.name(),
        seat.intended(),
        hole(call, file, Bench.expected(method.now(), confidence)),
        new MarkQuestion.Faces(seat.outline(), far),
        turn(call),
        edges(call),
        Optional.of(question));
  }

  private MarkQuestion.Hole hole(Call call, SeatFile file, ExpectedError marking) {
    double depth =
        call.length("--depth")
            .filter(Length::isPositive)
            .map(Length::millimetres)
            .orElseThrow(
                () ->
                    new CommandException(
                        "nothing says how deep the hole goes; add --depth, from face to face"));
    double drill =
        call.option("--drill")
            .map(said -> bench.drill(call, "--drill").diameter().millimetres())
            .orElse(file.question().holeDiameterMm());
    Optional<Length> wander = call.length("--wander");
    return new MarkQuestion.Hole(
        drill,
        depth,
        marking,
        wander.map(Length::millimetres).orElse(0.0) / depth,
        wander.isPresent() ? "as said" : "not counted, since none was said");
  }

  private static Turn turn(Call call) {
    String said = call.option("--turn").orElse("").toLowerCase(java.util.Locale.ROOT);
    for (Turn turn : Turn.values()) {
      if (turn.name().toLowerCase(java.util.Locale.ROOT).equals(said)) {
        return turn;
      }
    }
    throw new CommandException(
        (said.isEmpty() ? "nothing says how you turn the part over" : "\"" + said + "\" is no turn")
            + "; say --turn sideways (like a page of a book) or --turn endways (like a sheet of a"
            + " notepad)");
  }

  private static List<Integer> edges(Call call) {
    Optional<String> said = call.option("--edges");
    if (said.isEmpty()) {
      return List.of();
    }
    List<Integer> edges = new ArrayList<>();
    for (String number : said.get().split(",", -1)) {
      if (!number.strip().matches("\\d{1,5}")) {
        throw new CommandException(
            "--edges \"" + said.get() + "\" names no two edges; say it like --edges 1,4");
      }
      edges.add(Integer.parseInt(number.strip()));
    }
    return edges;
  }

  private static String text(FaceMark mark, MethodEstimate method, LengthUnit unit) {
    MarkQuestion question = mark.question();
    StringBuilder text =
        new StringBuilder(question.name())
            .append(": mark the far face, the part ")
            .append(question.turn().words())
            .append("\nSquare from two edges, as you see that face\n");
    Columns pair = new Columns().indent(2);
    mark.pair().forEach(d -> pair.row(d.name(), Figures.size(d.distanceMm(), unit)));
    text.append(pair.text()).append('\n').append(figures(mark, method, unit).text());
    mark.cautions()
        .forEach(caution -> text.append("\n  - ").append(LengthFormat.turned(caution, unit)));
    return text.append('\n').append(Cautions.DRILLING).toString();
  }

  private static Columns figures(FaceMark mark, MethodEstimate method, LengthUnit unit) {
    MarkQuestion.Hole hole = mark.question().hole();
    Columns columns =
        new Columns()
            .indent(2)
            .row("from the datum", sides(mark.mark(), unit))
            .row(
                "a slip in marking",
                String.format(
                    java.util.Locale.ROOT, "counts %.1f times with these edges", mark.slips()))
            .row("metal to the nearest edge", Figures.allowance(mark.metalMm(), unit))
            .row(
                "error of marking",
                Figures.allowance(hole.marking().radiusMm(), unit)
                    + ", "
                    + hole.marking().title()
                    + ", "
                    + hole.marking().means());
    Placings.spread(columns, method, unit)
        .row(
            "wander of the drill",
            Figures.allowance(hole.wanderMm(), unit)
                + " over "
                + Figures.size(hole.depthMm(), unit)
                + ", "
                + hole.leadMeans())
        .row(
            "error to be expected above",
            Figures.allowance(hole.errorAboveMm(), unit) + ", radius, both added");
    mark.above().ifPresent(seat -> columns.row("head above", PlaceData.seat(seat, unit)));
    return columns;
  }

  /** A place in words that cannot be taken for the other hand. */
  private static String sides(Point at, LengthUnit unit) {
    return Figures.size(Math.abs(at.xMm()), unit)
        + (at.xMm() < 0 ? " to the left, " : " to the right, ")
        + Figures.size(Math.abs(at.yMm()), unit)
        + (at.yMm() < 0 ? " towards you" : " away from you");
  }

  private static Map<String, Object> data(FaceMark mark, MethodEstimate method) {
    MarkQuestion.Hole hole = mark.question().hole();
    return Data.of(
        "seat", mark.question().name(),
        "turn", mark.question().turn().name().toLowerCase(java.util.Locale.ROOT),
        "markAsSeen", PlaceData.point(mark.mark()),
        "target", PlaceData.point(mark.question().target()),
        "markFrom", mark.pair().stream().map(HoleMark::distance).toList(),
        "slipCount", Data.rounded(mark.slips(), 4),
        "distances", mark.distances().stream().map(HoleMark::distance).toList(),
        "metalMm", Data.mm(mark.metalMm()),
        "drillDiameterMm", Data.mm(hole.diameterMm()),
        "depthMm", Data.mm(hole.depthMm()),
        "marking", PlaceData.error(hole.marking()),
        "method", Placings.data(method),
        "wanderMm", Data.mm(hole.wanderMm()),
        "wanderMeans", hole.leadMeans(),
        "errorAboveMm", Data.mm(hole.errorAboveMm()),
        "above", mark.above().map(PlaceData::seat),
        "faceAsSeen", mark.face().stream().map(PlaceData::point).toList(),
        "cautions", mark.cautions());
  }

  private static Map<String, Object> distance(EdgeDistance distance) {
    return Data.of(
        "edge", distance.name(),
        "distanceMm", Data.mm(distance.distanceMm()),
        "footAsSeen", PlaceData.point(distance.foot()),
        "endRoomMm", Data.mm(distance.endRoomMm()));
  }
}
