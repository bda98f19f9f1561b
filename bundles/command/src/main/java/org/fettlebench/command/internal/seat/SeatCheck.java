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
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.fits.HoleMethods;
import org.fettlebench.fits.Reach;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.fits.Seats;
import org.fettlebench.fits.Spanner;
import org.fettlebench.fits.Spanners;
import org.fettlebench.fits.Verdict;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.paper.SeatCards;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Checks whether a head sits where its hole must go. */
@Component(property = Commands.WORDS + "=seat check")
public final class SeatCheck implements Command {
  // The usual 19 holes in 20; common practice, no source.
  private static final double USUAL_CONFIDENCE = 0.95;
  private static final int BEARINGS = 16;
  private static final Usage USAGE =
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
              "--confidence", "P", "for more careful methods among the cures; 0.95 if not said");

  private final KitFiles files;
  private final Seats seats;
  private final HoleMethods methods;
  private final SeatPapers papers;
  private final Spanners spanners;
  private final OtherHeads others;

  /** Made by the framework. */
  @Activate
  public SeatCheck(
      @Reference KitFiles files,
      @Reference Seats seats,
      @Reference HoleMethods methods,
      @Reference SeatPapers papers,
      @Reference SeatTrade trade) {
    this.files = files;
    this.seats = seats;
    this.methods = methods;
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
    SeatQuestion question = spanner(call, file.question());
    double confidence = call.number("--confidence", 0, Math.nextDown(1.0)).orElse(USUAL_CONFIDENCE);
    SeatAnswer answer = seats.check(question);
    List<SeatCure> cures =
        answer.verdict() == Verdict.CLEARS
            ? List.of()
            : seats.cures(answer, others.of(question.head()), methods.methods(), confidence);
    List<Reach> rose = seats.rose(question, SeatWords.DIRECTIONS);
    SeatCards.Said said = new SeatCards.Said(chance(file, answer), rose, cures);
    String written = papers.write(call, answer, said);
    return Reply.of(
        answer.verdict() == Verdict.FOULS,
        SeatTexts.text(answer, cures, rose, call.unit()) + written,
        SeatTexts.data(answer, cures, seats.rose(question, BEARINGS)));
  }

  /** Returns the chance that a hole placed as the file says will do; empty when it does not say. */
  private OptionalDouble chance(SeatFile file, SeatAnswer answer) {
    return methods
        .find(file.hole().method())
        .map(
            method ->
                method.law().chanceWithin(answer.allowed(), answer.question().seat().intended()))
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }
}
