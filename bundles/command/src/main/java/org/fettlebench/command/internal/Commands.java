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
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/** The commands that bundles contribute now, by their words. */
@Component(service = Commands.class)
public final class Commands {
  /**
   * Service property by which a command of the suite tells its words before it is made; the same as
   * those of its usage.
   */
  public static final String WORDS = "fettlebench.command";

  private final BundleContext context;
  private final Faults faults;
  private final Map<Object, Offer> offered = new ConcurrentHashMap<>();
  private final Set<Offer> reported = ConcurrentHashMap.newKeySet();

  /** Made by the framework. */
  @Activate
  public Commands(BundleContext context, @Reference Faults faults) {
    this.context = context;
    this.faults = faults;
  }

  /** Takes up that a bundle offers a command. */
  @Reference(
      name = "command",
      service = Command.class,
      policy = ReferencePolicy.DYNAMIC,
      cardinality = ReferenceCardinality.MULTIPLE,
      unbind = "remove")
  public void add(ServiceReference<Command> reference) {
    boolean suites = reference.getBundle().equals(context.getBundle());
    Optional<String> told =
        Optional.ofNullable(reference.getProperty(WORDS)).filter(w -> suites).map(String::valueOf);
    offered.put(reference, new Offer(told, suites, () -> context.getService(reference)));
  }

  /** Lets a command go. */
  public void remove(ServiceReference<Command> reference) {
    Optional.ofNullable(offered.remove(reference)).ifPresent(reported::remove);
  }

  /** Takes a command that is made already. */
  void add(Command command) {
    boolean suites = command.getClass().getClassLoader() == Commands.class.getClassLoader();
    offered.put(command, new Offer(Optional.empty(), suites, () -> command));
  }

  /**
   * Returns all commands by their words. One that cannot say how it is called, or takes words that
   * are taken, is left out and reported once.
   */
  List<Command> all() {
    List<Command> commands = new ArrayList<>();
    for (Offer offer : byWords().values()) {
      offer.command().ifPresent(commands::add);
    }
    return List.copyOf(commands);
  }

  /** Finds the command with the most words that the typed words begin with. */
  Optional<Command> longest(List<String> typed) {
    String all = String.join(" ", typed) + " ";
    return byWords().entrySet().stream()
        .filter(entry -> all.startsWith(entry.getKey() + " "))
        .max(Comparator.comparingInt(entry -> entry.getKey().length()))
        .flatMap(entry -> entry.getValue().command());
  }

  private Map<String, Offer> byWords() {
    Map<String, Offer> byWords = new TreeMap<>();
    for (Offer offer : suiteFirst()) {
      words(offer)
          .filter(words -> byWords.putIfAbsent(words, offer) != null)
          .ifPresent(words -> report(offer, new IllegalStateException(Messages.taken(words))));
    }
    return byWords;
  }

  private List<Offer> suiteFirst() {
    List<Offer> offers = new ArrayList<>(offered.values());
    List<Offer> ordered = new ArrayList<>(offers.stream().filter(Offer::suites).toList());
    // By class name, so that of two modules the same one wins each time.
    offers.stream()
        .filter(offer -> !offer.suites())
        .filter(offer -> offer.command().isPresent())
        .sorted(Comparator.comparing(offer -> offer.command().orElseThrow().getClass().getName()))
        .forEach(ordered::add);
    return ordered;
  }

  private Optional<String> words(Offer offer) {
    try {
      return Optional.of(offer.words());
    } catch (RuntimeException | LinkageError e) {
      report(offer, e);
      return Optional.empty();
    }
  }

  private void report(Offer offer, Throwable e) {
    if (reported.add(offer)) {
      faults.report(offer.command().orElseThrow(), "adding its command", e);
    }
  }
}
