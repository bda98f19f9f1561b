package org.fettlebench.command.internal.seat;

import java.util.List;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fits.HoleMethods;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.Seats;
import org.fettlebench.fits.Verdict;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.threads.Threads;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Checks whether a head sits where its hole must go. */
@Component
public final class SeatCheck implements Command {
  // The usual 19 holes in 20; common practice, no source.
  private static final double USUAL_CONFIDENCE = 0.95;
  private static final Usage USAGE =
      Usage.of(
              "seat check",
              "Checks whether a head sits where its hole must go, and what would cure it.",
              "seat check gland.seat.toml")
          .needs("FILE", "a seat file; - for piped in")
          .option(
              "--confidence", "P", "for more careful methods among the cures; 0.95 if not said");

  private final KitFiles files;
  private final Seats seats;
  private final HoleMethods methods;
  private final OtherHeads others;

  /** Made by the framework. */
  @Activate
  public SeatCheck(
      @Reference KitFiles files,
      @Reference Seats seats,
      @Reference HoleMethods methods,
      @Reference Threads threads,
      @Reference Heads heads) {
    this.files = files;
    this.seats = seats;
    this.methods = methods;
    this.others = new OtherHeads(threads, heads);
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    SeatQuestion question = files.readSeat(call.operand("FILE").orElseThrow(), call.text("FILE"));
    double confidence = call.number("--confidence", 0, Math.nextDown(1.0)).orElse(USUAL_CONFIDENCE);
    SeatAnswer answer = seats.check(question);
    List<SeatCure> cures =
        answer.verdict() == Verdict.CLEARS
            ? List.of()
            : seats.cures(answer, others.of(question.head()), methods.methods(), confidence);
    return Reply.of(
        answer.verdict() == Verdict.FOULS,
        SeatTexts.text(answer, cures, call.unit()),
        SeatTexts.data(answer, cures));
  }
}
