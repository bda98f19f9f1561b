package org.fettlebench.command.internal.suite;

import java.util.List;
import java.util.stream.Collectors;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Data;
import org.fettlebench.modules.Module;
import org.fettlebench.modules.Modules;

/** A command that leaves a module of the club out, or lets it in again. */
abstract class ModuleSwitch implements Command {
  private final Modules modules;
  private final Usage usage;
  private final boolean enable;

  ModuleSwitch(Modules modules, Usage usage, boolean enable) {
    this.modules = modules;
    this.usage = usage.needs("NAME", "the module's symbolic name or its jar's title");
    this.enable = enable;
  }

  @Override
  public final Usage usage() {
    return usage;
  }

  @Override
  public final Reply run(Call call) {
    Module module = find(call.operand("NAME").orElseThrow());
    modules.enable(module.symbolicName(), enable);
    return Reply.done(
        module.title() + (enable ? " is let in again" : " is left out, also at the next start"),
        Data.of("symbolicName", module.symbolicName(), "enabled", enable));
  }

  private Module find(String name) {
    // The suite's own parts are not for switching off: without them nothing answers.
    List<Module> dropped = modules.installed().stream().filter(Module::dropped).toList();
    return dropped.stream()
        .filter(m -> m.symbolicName().equals(name) || m.title().equalsIgnoreCase(name))
        .findFirst()
        .orElseThrow(() -> new CommandException(none(name, dropped)));
  }

  private static String none(String name, List<Module> dropped) {
    return dropped.isEmpty()
        ? "no module of the club's own is installed"
        : "no module \""
            + name
            + "\" is installed; there are "
            + dropped.stream().map(Module::symbolicName).collect(Collectors.joining(", "));
  }
}
