package org.fettlebench.command;

import org.osgi.annotation.versioning.ConsumerType;

/**
 * A command of the command line. Registered as a service by any bundle; it appears with its help at
 * once and goes when the bundle goes. May be called on any thread and by several people at a time,
 * so it keeps no state between calls.
 */
@ConsumerType
public interface Command {
  /** Returns how the command is called; the same each time. */
  Usage usage();

  /**
   * Does the work, wholly or not at all.
   *
   * @throws CommandException when the words or the input cannot be used; becomes exit status 2
   */
  Reply run(Call call);
}
