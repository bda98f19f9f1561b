package org.fettlebench.command.internal.kit;

import org.fettlebench.club.KitShelf;
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

/** Takes a kit off the club's shelf; its file's text is given back, so that nothing is lost. */
@Component(property = Commands.WORDS + "=kit remove")
public final class KitRemove implements Command {
  private static final Usage USAGE =
      Usage.of(
              "kit remove",
              "Takes a kit off the club's shelf and prints its file, so that nothing is lost.",
              "kit remove \"Bench pump\" > bench-pump.kit.toml")
          .needsMany("NAME", "the kit's name");

  private final KitShelf shelf;

  /** Made by the framework. */
  @Activate
  public KitRemove(@Reference KitShelf shelf) {
    this.shelf = shelf;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    String name = call.operand("NAME").orElseThrow();
    KitShelf.KeptKit kit =
        shelf.remove(name).orElseThrow(() -> new CommandException(KitShelfWords.none(shelf, name)));
    return Reply.done(
        kit.text().stripTrailing(),
        Data.of("name", kit.name(), "keptAt", kit.keptAt().toString(), "text", kit.text()));
  }
}
