package org.fettlebench.suite.itest.club;

import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;

/** A command of a club's module that cannot even say how it is called. */
public final class RefusingCommand implements Command {
  /** What it says. */
  public static final String SAID = "this command has no words";

  @Override
  public Usage usage() {
    throw new IllegalStateException(SAID);
  }

  @Override
  public Reply run(Call call) {
    throw new IllegalStateException(SAID);
  }
}
