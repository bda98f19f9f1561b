package org.fettlebench.command.internal.method;

import java.util.List;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.kits.ClubMethods;
import org.fettlebench.measure.LengthUnit;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Shows one way of placing a hole: its steps, their laws, and what the club measured. */
@Component(property = Commands.WORDS + "=method show")
public final class MethodShow implements Command {
  private static final Usage USAGE =
      Asking.options(
          Usage.of(
                  "method show",
                  "Shows a way of placing a hole: steps, laws of error, what was measured.",
                  "method show scribe-and-dot")
              .needs("METHOD", "as method list names it"));

  private final ClubMethods methods;
  private final MeasuredErrors errors;

  /** Made by the framework. */
  @Activate
  public MethodShow(@Reference ClubMethods methods, @Reference MeasuredErrors errors) {
    this.methods = methods;
    this.errors = errors;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    List<MeasuredError> book = errors.all();
    ClubMethods.Asked asked = Asking.of(call, book);
    List<MethodEstimate> all = methods.estimates(book, asked);
    MethodEstimate estimate = one(all, call.operand("METHOD").orElseThrow());
    return Reply.done(text(estimate, asked, call.unit()), MethodTexts.data(estimate));
  }

  static MethodEstimate one(List<MethodEstimate> all, String id) {
    return all.stream()
        .filter(each -> each.before().id().equals(id))
        .findFirst()
        .orElseThrow(() -> unknown(all.stream().map(each -> each.before().id()).toList(), id));
  }

  static CommandException unknown(List<String> ids, String id) {
    return new CommandException(
        "\"" + id + "\" is no known way of placing a hole; known are " + String.join(", ", ids));
  }

  private static String text(MethodEstimate estimate, ClubMethods.Asked asked, LengthUnit unit) {
    HoleMethod before = estimate.before();
    StringBuilder text = new StringBuilder(before.id()).append(": ").append(before.title());
    for (int i = 0; i < before.steps().size(); i++) {
      text.append("\n  ").append(i + 1).append(". ").append(before.steps().get(i));
    }
    text.append("\nErrors, as known before\n").append(laws(before, unit));
    if (estimate.holes() == 0) {
      return text.append("\nNothing was measured yet; \"method measure\" writes an error down.")
          .toString();
    }
    text.append("\nErrors, as measured (")
        .append(estimate.now().source().citation())
        .append(")\n")
        .append(measured(estimate, unit));
    estimate
        .offset()
        .ifPresent(off -> text.append("\n  offset: ").append(MethodTexts.offset(off, unit)));
    return text.append("\n").append(MethodTexts.prior(asked)).toString();
  }

  private static String laws(HoleMethod method, LengthUnit unit) {
    Columns columns = new Columns().indent(2);
    for (PositionLaw.Part part : method.law().parts()) {
      columns.row(part.cause(), MethodTexts.law(part.law(), unit), Figures.source(part.source()));
    }
    if (method.law().parts().size() > 1) {
      columns.row(
          "together",
          "sigma " + MethodTexts.fine(method.sigmaPerAxisMm(), unit) + " " + unit.symbol(),
          "root of the sum of the squares");
    }
    return columns.row("95 % of holes within", radius(method, unit)).text();
  }

  private static String measured(MethodEstimate estimate, LengthUnit unit) {
    String symbol = " " + unit.symbol();
    return new Columns()
        .indent(2)
        .row("sigma", MethodTexts.sigma(estimate, unit) + symbol, axes(estimate))
        .row("with a chance of 95 % within", MethodTexts.interval(estimate, unit) + symbol, "")
        .row("95 % of holes within", radius(estimate.now(), unit), "")
        .text();
  }

  private static String axes(MethodEstimate estimate) {
    return estimate.together()
        ? "along x and y together"
        : "along x, along y: taken apart, as they differ";
  }

  private static String radius(HoleMethod method, LengthUnit unit) {
    return Figures.allowance(method.errorRadiusMm(MethodTexts.SHOWN_CONFIDENCE), unit)
        + " radius of position error";
  }
}
