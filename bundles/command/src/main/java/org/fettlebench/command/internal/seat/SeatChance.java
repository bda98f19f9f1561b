package org.fettlebench.command.internal.seat;

import java.util.List;
import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.ChanceWords;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.method.Placings;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.Seats;
import org.fettlebench.holes.chance.Aim;
import org.fettlebench.holes.chance.Chance;
import org.fettlebench.holes.chance.Chances;
import org.fettlebench.holes.chance.MethodChance;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.SeatFile;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Tells how likely each way of placing the hole is to do for a seat. */
@Component(property = Commands.WORDS + "=seat chance")
public final class SeatChance implements Command {
  private static final int USUAL_SEED = 1;

  private static final Usage USAGE =
      Placings.options(
          Usage.of(
                  "seat chance",
                  "Tells the chance that a hole lands where the head sits, for each way of placing it.",
                  "seat chance gland.seat.toml --chance 95%")
              .needs("FILE", "a seat file; - for piped in")
              .option("--method", "METHOD", "only this way of placing it")
              .option(
                  "--chance", "P", "chance asked, as 95% or 0.95; what the file asks if not said")
              .option("--trials", "N", "simulate besides, with so many holes, 1000 to 10000000")
              .option("--seed", "N", "of that simulation; 1 if not said"));

  private final KitFiles files;
  private final Seats seats;
  private final Placings placings;
  private final Chances chances;

  /** Made by the framework. */
  @Activate
  public SeatChance(
      @Reference KitFiles files,
      @Reference Seats seats,
      @Reference Placings placings,
      @Reference Chances chances) {
    this.files = files;
    this.seats = seats;
    this.placings = placings;
    this.chances = chances;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    SeatFile file = files.readSeatFile(call.operand("FILE").orElseThrow(), text(call));
    double asked = ChanceWords.read(call, "--chance").orElse(file.hole().confidence());
    SeatAnswer answer = seats.check(file.question());
    List<MethodChance> all = chances.each(answer, asked(call));
    Optional<MethodChance> enough = chances.leastCareful(all, asked);
    ChanceTexts.Told told =
        new ChanceTexts.Told(
            answer, file.hole().method(), all, enough, asked, thrown(call, answer, all));
    return Reply.of(enough.isEmpty(), told.text(call.unit()), told.data());
  }

  private String text(Call call) {
    return call.operand("FILE").filter("-"::equals).isPresent()
        ? call.text("FILE")
        : files.text(call.file("FILE"));
  }

  /** Returns the methods asked about as those have measured them who are asked about. */
  private List<HoleMethod> asked(Call call) {
    return call.option("--method")
        .map(id -> List.of(placings.one(call, id).now()))
        .orElseGet(() -> placings.now(call));
  }

  private List<Chance> thrown(Call call, SeatAnswer answer, List<MethodChance> all) {
    Optional<Integer> trials = call.whole("--trials", 1000, 10_000_000);
    int seed = call.whole("--seed", 0, Integer.MAX_VALUE).orElse(USUAL_SEED);
    if (trials.isEmpty()) {
      return List.of();
    }
    return all.stream()
        .map(
            each ->
                chances.simulated(
                    answer.allowed(),
                    answer.question().seat().intended(),
                    each.method().law(),
                    Aim.trials(seed, trials.get())))
        .toList();
  }
}
