package org.fettlebench.command;

import org.osgi.annotation.versioning.ConsumerType;

/**
 * A command of the command line. Registered as a service by any bundle; it appears with its help at
 * once and goes when the bundle goes.
 */
@ConsumerType
public interface Command {
  /** Returns how the command is called. */
  Usage usage();

  /**
   * Does the work.
   *
   * @throws CommandException when the words or the input cannot be used; becomes exit status 2
   */
  Reply run(Call call);
}
