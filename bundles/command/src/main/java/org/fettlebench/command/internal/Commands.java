package org.fettlebench.command.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.fettlebench.command.Command;
import org.fettlebench.modules.Faults;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/** The commands that bundles contribute now, by their words. */
@Component(service = Commands.class)
public final class Commands {
  private final Faults faults;
  private final Set<Command> contributed = ConcurrentHashMap.newKeySet();
  private final Set<Command> reported = ConcurrentHashMap.newKeySet();

  /** Made by the framework. */
  @Activate
  public Commands(@Reference Faults faults) {
    this.faults = faults;
  }

  /** Takes a command in. */
  @Reference(
      name = "command",
      policy = ReferencePolicy.DYNAMIC,
      cardinality = ReferenceCardinality.MULTIPLE,
      unbind = "remove")
  public void add(Command command) {
    contributed.add(command);
  }

  /** Lets a command go. */
  public void remove(Command command) {
    contributed.remove(command);
    reported.remove(command);
  }

  /**
   * Returns all commands by their words. One that cannot say how it is called, or takes words that
   * are taken, is left out and reported once.
   */
  List<Command> all() {
    Map<String, Command> byWords = new TreeMap<>();
    for (Command command : suiteFirst()) {
      words(command)
          .filter(words -> byWords.putIfAbsent(words, command) != null)
          .ifPresent(words -> report(command, new IllegalStateException(Messages.taken(words))));
    }
    return List.copyOf(byWords.values());
  }

  private List<Command> suiteFirst() {
    List<Command> commands = new ArrayList<>(contributed);
    // By class name, so that of two modules the same one wins each time.
    commands.sort(
        Comparator.comparing((Command c) -> !isSuites(c))
            .thenComparing(c -> c.getClass().getName()));
    return commands;
  }

  private static boolean isSuites(Command command) {
    return command.getClass().getClassLoader() == Commands.class.getClassLoader();
  }

  private Optional<String> words(Command command) {
    try {
      return Optional.of(command.usage().words());
    } catch (RuntimeException | LinkageError e) {
      report(command, e);
      return Optional.empty();
    }
  }

  private void report(Command command, Throwable e) {
    if (reported.add(command)) {
      faults.report(command, "adding its command", e);
    }
  }

  /** Finds the command with the most words that the typed words begin with. */
  static Optional<Command> longest(List<Command> commands, List<String> typed) {
    String all = String.join(" ", typed) + " ";
    return commands.stream()
        .filter(command -> all.startsWith(command.usage().words() + " "))
        .max(Comparator.comparingInt(command -> command.usage().words().length()));
  }
}
