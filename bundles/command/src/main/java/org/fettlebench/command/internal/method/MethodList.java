package org.fettlebench.command.internal.method;

import java.util.List;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.kits.ClubMethods;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lists the ways of placing a hole with what is known of their errors. */
@Component(property = Commands.WORDS + "=method list")
public final class MethodList implements Command {
  private static final Usage USAGE =
      Asking.options(
          Usage.of(
              "method list",
              "Lists the ways of placing a hole and how far out their holes may be expected.",
              "method list --member Ann"));

  private final ClubMethods methods;
  private final MeasuredErrors errors;

  /** Made by the framework. */
  @Activate
  public MethodList(@Reference ClubMethods methods, @Reference MeasuredErrors errors) {
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
    List<MethodEstimate> estimates = methods.estimates(book, asked);
    return Reply.done(
        MethodTexts.table(estimates, asked, call.unit()),
        Data.of(
            "member", asked.member(),
            "machine", asked.machine(),
            "priorHoleCount", Data.rounded(asked.priorHoles(), 3),
            "methods", estimates.stream().map(MethodTexts::data).toList()));
  }
}
