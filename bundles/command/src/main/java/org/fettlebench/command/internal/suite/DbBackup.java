package org.fettlebench.command.internal.suite;

import java.nio.file.Path;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.store.StoreEngine;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Copies the club's store as it is at one moment. */
@Component(property = Commands.WORDS + "=db backup")
public final class DbBackup implements Command {
  private static final String WHY = "asked";
  private static final Usage USAGE =
      Usage.of("db backup", "Copies the club's store as it is at this moment.", "db backup");

  private final StoreEngine engine;

  /** Made by the framework. */
  @Activate
  public DbBackup(@Reference StoreEngine engine) {
    this.engine = engine;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    Path copy = engine.backup(WHY);
    return Reply.done("the store is copied to " + copy, Data.of("backup", copy.toString()));
  }
}
