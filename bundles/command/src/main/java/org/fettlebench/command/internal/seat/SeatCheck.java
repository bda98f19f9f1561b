package org.fettlebench.command.internal.seat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.ChanceWords;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.method.Placings;
import org.fettlebench.fits.Reach;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.fits.Seats;
import org.fettlebench.fits.Spanner;
import org.fettlebench.fits.Spanners;
import org.fettlebench.fits.Verdict;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.paper.SeatCards;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Checks whether a head sits where its hole must go. */
@Component(property = Commands.WORDS + "=seat check")
public final class SeatCheck implements Command {
  private static final int BEARINGS = 16;
  private static final Usage USAGE =
      Placings.options(
          Usage.of(
                  "seat check",
                  "Checks whether a head sits where its hole must go, and what would cure it.",
                  "seat check gland.seat.toml")
              .needs("FILE", "a seat file; - for piped in")
              .option(
                  "--spanner",
                  "KIND",
                  "room for a ring, open or socket spanner of the tables besides the head")
              .option(SeatPapers.SVG, "FILE", "write a drawing to scale there")
              .option(SeatPapers.CARD, "FILE", "write the card for the bench (PDF) there")
              .option(
                  "--confidence",
                  "P",
                  "chance that the hole lands within its expected error; of the seat file if not said"));

  private final KitFiles files;
  private final Seats seats;
  private final Placings placings;
  private final SeatPapers papers;
  private final Spanners spanners;
  private final OtherHeads others;

  /** Made by the framework. */
  @Activate
  public SeatCheck(
      @Reference KitFiles files,
      @Reference Seats seats,
      @Reference Placings placings,
      @Reference SeatPapers papers,
      @Reference SeatTrade trade) {
    this.files = files;
    this.seats = seats;
    this.placings = placings;
    this.papers = papers;
    this.spanners = trade.spanners();
    this.others = new OtherHeads(trade.threads(), trade.heads(), spanners);
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  private String text(Call call) {
    return call.operand("FILE").filter("-"::equals).isPresent()
        ? call.text("FILE")
        : files.text(call.file("FILE"));
  }

  /** Returns the question with room for the spanner that is asked for, if one is. */
  private SeatQuestion spanner(Call call, SeatQuestion question) {
    Optional<String> words = call.option("--spanner");
    if (words.isEmpty()) {
      return question;
    }
    Spanner.Kind kind =
        Arrays.stream(Spanner.Kind.values())
            .filter(each -> each.name().equalsIgnoreCase(words.get()))
            .findFirst()
            .orElseThrow(
                () ->
                    new CommandException(
                        "--spanner " + words.get() + " is no kind; say ring, open or socket"));
    double flats =
        question
            .head()
            .acrossFlatsMm()
            .orElseThrow(
                () ->
                    new CommandException(
                        question.head().title()
                            + " has no flats for a spanner; leave --spanner out"));
    return question.withSpanner(
        spanners
            .find(kind, flats)
            .orElseThrow(
                () ->
                    new CommandException(
                        "no table has a "
                            + kind.words()
                            + " for "
                            + Figures.size(flats, call.unit())
                            + " across flats; measure yours and write it under [head] as spanner ="
                            + " { kind, diameter }")));
  }

  @Override
  public Reply run(Call call) {
    SeatFile file = files.readSeatFile(call.operand("FILE").orElseThrow(), text(call));
    double confidence = ChanceWords.read(call, "--confidence").orElse(file.hole().confidence());
    MethodEstimate method = placings.one(call, file.hole().method());
    SeatQuestion question =
        spanner(
            call,
            file.question()
                .withError(
                    method.now().errorRadiusMm(confidence), method.now().errorMeans(confidence)));
    SeatAnswer answer = seats.check(question);
    List<SeatCure> cures =
        answer.verdict() == Verdict.CLEARS
            ? List.of()
            : seats.cures(answer, others.of(question.head()), placings.now(call), confidence);
    List<Reach> rose = seats.rose(question, SeatWords.DIRECTIONS);
    SeatCards.Said said = new SeatCards.Said(chance(method, answer), rose, cures);
    String written = papers.write(call, answer, said);
    SeatTexts told = new SeatTexts(answer, cures, method);
    return Reply.of(
        answer.verdict() == Verdict.FOULS,
        told.text(rose, call.unit()) + written,
        told.data(seats.rose(question, BEARINGS)));
  }

  /** Returns the chance that a hole placed as the file says will do. */
  private static OptionalDouble chance(MethodEstimate method, SeatAnswer answer) {
    return OptionalDouble.of(
        method.now().law().chanceWithin(answer.allowed(), answer.question().seat().intended()));
  }
}
