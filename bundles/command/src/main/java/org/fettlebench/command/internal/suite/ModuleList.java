package org.fettlebench.command.internal.suite;

import java.util.List;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.When;
import org.fettlebench.modules.Module;
import org.fettlebench.modules.Modules;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lists what is installed, what each module adds, and what went wrong with it. */
@Component(property = Commands.WORDS + "=module list")
public final class ModuleList implements Command {
  private static final Usage USAGE =
      Usage.of(
              "module list",
              "Lists the modules of the club (with --all, also the suite's own parts).",
              "module list")
          .flag("--all", "also the parts that the suite itself is made of");

  // A rule that throws does so at every joint; a few tell the story.
  private static final int FAULTS_SHOWN = 5;

  private final Modules modules;

  /** Made by the framework. */
  @Activate
  public ModuleList(@Reference Modules modules) {
    this.modules = modules;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    List<Module> shown =
        modules.installed().stream()
            .filter(module -> module.dropped() || call.on("--all"))
            .toList();
    StringBuilder text = new StringBuilder();
    shown.forEach(module -> text.append(text(module)).append('\n'));
    if (shown.isEmpty()) {
      text.append("no module of the club's own\n");
    }
    text.append("modules folder: ").append(modules.folder());
    return Reply.of(
        shown.stream().anyMatch(ModuleList::bad),
        text.toString(),
        Data.of(
            "folder", modules.folder().toString(),
            "modules", shown.stream().map(ModuleList::data).toList()));
  }

  /** A part of the suite that waits for a window is well; one with faults is not. */
  private static boolean bad(Module module) {
    return !module.faults().isEmpty() || (module.dropped() && !module.working());
  }

  private static String text(Module module) {
    StringBuilder text =
        new StringBuilder((module.title() + " " + module.version()).strip()).append(": ");
    text.append(state(module));
    if (!module.description().isBlank()) {
      text.append("\n  ").append(module.description());
    }
    module.contributions().forEach(adds -> text.append("\n  adds ").append(adds));
    for (Module.Fault fault : module.faults().stream().limit(FAULTS_SHOWN).toList()) {
      text.append("\n  fault at ").append(When.said(fault.at())).append(", ").append(fault.doing());
      text.append(": ").append(fault.said());
    }
    int more = module.faults().size() - FAULTS_SHOWN;
    if (more > 0) {
      text.append("\n  and ").append(more).append(more == 1 ? " older fault" : " older faults");
      text.append("; --json and the log have them all");
    }
    return text.toString();
  }

  private static String state(Module module) {
    return module.working() && !module.faults().isEmpty()
        ? module.state() + ", with faults"
        : module.state();
  }

  private static Object data(Module module) {
    return Data.of(
        "symbolicName", module.symbolicName(),
        "title", module.title(),
        "description", module.description(),
        "version", module.version(),
        "vendor", module.vendor(),
        "dropped", module.dropped(),
        "location", module.location(),
        "working", module.working(),
        "state", module.state(),
        "since", module.since().toString(),
        "contributions", module.contributions(),
        "faults", module.faults().stream().map(ModuleList::data).toList());
  }

  private static Object data(Module.Fault fault) {
    return Data.of("at", fault.at().toString(), "doing", fault.doing(), "said", fault.said());
  }
}
