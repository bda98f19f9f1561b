package org.fettlebench.command.internal.method;

import org.fettlebench.club.MeasuredError;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Strikes a measured error out. */
@Component(property = Commands.WORDS + "=method strike")
public final class MethodStrike implements Command {
  private static final Usage USAGE =
      Usage.of(
              "method strike",
              "Strikes a measured error out, so that it no longer counts; it stays in the book.",
              "method strike 3 --reason \"measured from the wrong edge\"")
          .needs("ERROR", "its number, as method errors lists it")
          .option("--reason", "TEXT", "why; must be said")
          .option("--member", "NAME", "who does it");

  private final MeasuredErrors errors;

  /** Made by the framework. */
  @Activate
  public MethodStrike(@Reference MeasuredErrors errors) {
    this.errors = errors;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    String typed = call.operand("ERROR").orElseThrow();
    if (!typed.matches("[0-9]{1,18}")) {
      throw new CommandException(
          "\"" + typed + "\" is no number of an error; \"method errors\" shows them");
    }
    MeasuredError entry =
        errors.strike(
            Long.parseLong(typed),
            call.option("--member").orElse(""),
            call.option("--reason").orElse(""));
    return Reply.done(
        "error " + entry.id() + " is struck out and no longer counts",
        Data.of("error", ErrorTexts.data(entry)));
  }
}
