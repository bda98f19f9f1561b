package org.fettlebench.command.internal.method;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fettlebench.club.HoleError;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.kits.ErrorFiles;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lists the measured errors, for people or as a list that can be taken in again. */
@Component(property = Commands.WORDS + "=method errors")
public final class MethodErrors implements Command {
  private static final Usage USAGE =
      Usage.of(
              "method errors",
              "Lists how far holes were out; with --csv as a list that method take-in reads.",
              "method errors --method scribe-and-dot")
          .option("--method", "METHOD", "only of this way of placing a hole")
          .option("--member", "NAME", "only the holes that this member drilled")
          .option("--machine", "NAME", "only the holes drilled on this machine")
          .flag("--all", "those struck out too")
          .flag("--csv", "as CSV, without those struck out");

  private final MeasuredErrors errors;
  private final ErrorFiles files;

  /** Made by the framework. */
  @Activate
  public MethodErrors(@Reference MeasuredErrors errors, @Reference ErrorFiles files) {
    this.errors = errors;
    this.files = files;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    List<MeasuredError> book = errors.all();
    List<MeasuredError> asked =
        book.stream()
            .filter(entry -> call.on("--all") && !call.on("--csv") || entry.counts())
            .filter(entry -> is(call.option("--method"), entry, HoleError::method))
            .filter(entry -> is(call.option("--member"), entry, HoleError::member))
            .filter(entry -> is(call.option("--machine"), entry, HoleError::machine))
            .toList();
    return Reply.done(
        call.on("--csv") ? files.write(asked).stripTrailing() : text(book, asked, call),
        Data.of("errors", asked.stream().map(ErrorTexts::data).toList()));
  }

  private static boolean is(
      Optional<String> asked, MeasuredError entry, Function<HoleError, String> field) {
    return asked.map(String::strip).map(field.apply(entry.error())::equals).orElse(true);
  }

  private static String text(List<MeasuredError> book, List<MeasuredError> asked, Call call) {
    if (book.isEmpty()) {
      return "No error was measured yet; \"method measure\" writes one down.";
    }
    return asked.isEmpty()
        ? "None of the " + book.size() + " errors in the book is such a one."
        : ErrorTexts.table(asked, call.unit());
  }
}
