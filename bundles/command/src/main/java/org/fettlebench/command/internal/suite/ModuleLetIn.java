package org.fettlebench.command.internal.suite;

import org.fettlebench.command.Command;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.modules.Modules;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lets a module in again that was left out. */
@Component(service = Command.class, property = Commands.WORDS + "=module let-in")
public final class ModuleLetIn extends ModuleSwitch {
  private static final Usage USAGE =
      Usage.of(
          "module let-in",
          "Lets a module in again that was left out.",
          "module let-in org.example.our-club");

  /** Made by the framework. */
  @Activate
  public ModuleLetIn(@Reference Modules modules) {
    super(modules, USAGE, true);
  }
}
