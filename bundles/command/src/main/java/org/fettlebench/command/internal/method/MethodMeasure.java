package org.fettlebench.command.internal.method;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import org.fettlebench.club.HoleError;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.HoleMethods;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.kits.ClubMethods;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Writes down how far a hole was out. */
@Component(property = Commands.WORDS + "=method measure")
public final class MethodMeasure implements Command {
  private static final Usage USAGE =
      Usage.of(
              "method measure",
              "Writes down how far a hole was out, and says what the errors come to.",
              "method measure scribe-and-dot --x 0.12mm --y -0.05mm --member Ann")
          .needs("METHOD", "how it was placed, as method list names it")
          .option("--x", "LENGTH", "how far right of its place it is; negative to the left")
          .option("--y", "LENGTH", "how far beyond its place, away from you; negative towards you")
          .option("--member", "NAME", "who drilled it")
          .option("--machine", "NAME", "on what")
          .option("--date", "DAY", "when it was measured, as 2030-02-28; today if not said")
          .option("--note", "TEXT", "anything else");

  private final HoleMethods methods;
  private final ClubMethods measured;
  private final MeasuredErrors errors;

  /** Made by the framework. */
  @Activate
  public MethodMeasure(
      @Reference HoleMethods methods,
      @Reference ClubMethods measured,
      @Reference MeasuredErrors errors) {
    this.methods = methods;
    this.measured = measured;
    this.errors = errors;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    String id = call.operand("METHOD").orElseThrow();
    if (methods.find(id).isEmpty()) {
      throw MethodShow.unknown(methods.methods().stream().map(HoleMethod::id).toList(), id);
    }
    if (call.option("--x").isEmpty() || call.option("--y").isEmpty()) {
      throw new CommandException(
          "say both --x and --y, 0mm where it was right. Example: fettlebench " + USAGE.example());
    }
    HoleError error =
        new HoleError(
            id,
            call.length("--x").orElseThrow(),
            call.length("--y").orElseThrow(),
            date(call),
            call.option("--member").orElse(""),
            call.option("--machine").orElse(""),
            call.option("--note").orElse(""));
    MeasuredError entry = errors.enter(List.of(error)).get(0);
    MethodEstimate estimate = measured.find(id, errors.all()).orElseThrow();
    return Reply.done(
        "error "
            + entry.id()
            + " is in the book; sigma of "
            + id
            + " is now "
            + MethodTexts.sigma(estimate, call.unit())
            + " "
            + call.unit().symbol()
            + " ("
            + estimate.now().source().citation()
            + ")",
        Data.of("error", ErrorTexts.data(entry), "method", MethodTexts.data(estimate)));
  }

  private static LocalDate date(Call call) {
    String typed = call.option("--date").orElse("");
    try {
      LocalDate today = LocalDate.now();
      LocalDate date = typed.isEmpty() ? today : LocalDate.parse(typed);
      if (date.isAfter(today)) {
        throw new CommandException("--date " + typed + " is still to come; today is " + today);
      }
      return date;
    } catch (DateTimeParseException e) {
      throw new CommandException("--date \"" + typed + "\" is no day; write it as 2030-02-28", e);
    }
  }
}
