package org.fettlebench.command.internal.method;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.club.HoleError;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.kits.ErrorFiles;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Takes in a list of measured errors. */
@Component(property = Commands.WORDS + "=method take-in")
public final class MethodTakeIn implements Command {
  private static final Usage USAGE =
      Usage.of(
              "method take-in",
              "Takes in a list (CSV) of measured errors; what is in the book already is left out.",
              "method take-in errors.csv")
          .needs("FILE", "the list, as method errors --csv writes it; - for piped in");

  private final MeasuredErrors errors;
  private final ErrorFiles files;

  /** Made by the framework. */
  @Activate
  public MethodTakeIn(@Reference MeasuredErrors errors, @Reference ErrorFiles files) {
    this.errors = errors;
    this.files = files;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    List<HoleError> listed = files.read(call.operand("FILE").orElseThrow(), call.text("FILE"));
    // One by one: a list may well have the same error twice, and then the book must too.
    List<HoleError> known =
        new ArrayList<>(errors.all().stream().map(MeasuredError::error).toList());
    List<HoleError> fresh = listed.stream().filter(error -> !known.remove(error)).toList();
    List<MeasuredError> entered = errors.enter(fresh);
    int left = listed.size() - fresh.size();
    return Reply.done(
        Figures.count(entered.size(), "error")
            + " taken in"
            + (left == 0 ? "" : ", " + left + " in the book already"),
        Data.of(
            "errors", entered.stream().map(ErrorTexts::data).toList(), "knownAlreadyCount", left));
  }
}
