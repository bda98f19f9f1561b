package org.fettlebench.command.internal;

import java.util.Optional;
import java.util.function.Supplier;
import org.fettlebench.command.Command;

/**
 * A command as a bundle offers it. The suite's own tell their words before they are made, so that a
 * call makes the one it needs and not a hundred others with all that they stand on.
 */
final class Offer {
  private final Optional<String> told;
  private final boolean suites;
  private final Supplier<Command> maker;
  private Command made;

  /**
   * Takes an offer up.
   *
   * @param told its words, where they are known without making it
   * @param suites whether it is one of the suite's own, which cannot be taken by a module
   * @param maker makes it; gives null when it is gone
   */
  Offer(Optional<String> told, boolean suites, Supplier<Command> maker) {
    this.told = told;
    this.suites = suites;
    this.maker = maker;
  }

  boolean suites() {
    return suites;
  }

  /** Returns the words that call it; may make it, and throw what it throws. */
  String words() {
    return told.orElseGet(() -> command().orElseThrow().usage().words());
  }

  /** Returns the command, made at the first call; empty when its bundle took it back. */
  synchronized Optional<Command> command() {
    if (made == null) {
      made = maker.get();
    }
    return Optional.ofNullable(made);
  }
}
