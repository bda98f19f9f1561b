package org.fettlebench.command.internal.kit;

import java.util.List;
import org.fettlebench.club.KitShelf;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.When;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lists the kits that the club keeps. */
@Component(property = Commands.WORDS + "=kit list")
public final class KitList implements Command {
  private static final Usage USAGE =
      Usage.of("kit list", "Lists the kits on the club's shelf, newest first.", "kit list");

  private final KitShelf shelf;

  /** Made by the framework. */
  @Activate
  public KitList(@Reference KitShelf shelf) {
    this.shelf = shelf;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    List<KitShelf.KeptKit> kits = shelf.kits();
    Columns columns = new Columns().row("kit", "kept");
    kits.forEach(kit -> columns.row(kit.name(), When.said(kit.keptAt())));
    List<Object> data =
        kits.stream()
            .<Object>map(kit -> Data.of("name", kit.name(), "keptAt", kit.keptAt().toString()))
            .toList();
    return Reply.done(kits.isEmpty() ? KitShelfWords.EMPTY : columns.text(), Data.of("kits", data));
  }
}
