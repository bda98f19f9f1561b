package org.fettlebench.command.internal.suite;

import org.fettlebench.command.Command;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.modules.Modules;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Leaves a module of the club out, also at the next start. */
@Component(service = Command.class, property = Commands.WORDS + "=module leave-out")
public final class ModuleLeaveOut extends ModuleSwitch {
  private static final Usage USAGE =
      Usage.of(
          "module leave-out",
          "Leaves a module of the club out, also at the next start.",
          "module leave-out org.example.our-club");

  /** Made by the framework. */
  @Activate
  public ModuleLeaveOut(@Reference Modules modules) {
    super(modules, USAGE, false);
  }
}
