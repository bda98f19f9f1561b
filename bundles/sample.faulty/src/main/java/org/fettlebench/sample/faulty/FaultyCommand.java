package org.fettlebench.sample.faulty;

import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.osgi.service.component.annotations.Component;

/** A command that throws when it is run. */
@Component
public final class FaultyCommand implements Command {
  @Override
  public Usage usage() {
    return Usage.of("faulty run", "Fails.", "faulty run");
  }

  @Override
  public Reply run(Call call) {
    throw new IllegalStateException("the faulty command cannot run");
  }
}
