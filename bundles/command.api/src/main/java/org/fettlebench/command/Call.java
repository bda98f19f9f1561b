package org.fettlebench.command;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** One call of a command, its words already taken apart. */
@ProviderType
public interface Call {
  /** Returns an operand. */
  Optional<String> operand(String name);

  /** Returns all words of an operand that takes many. */
  List<String> operands(String name);

  /** Returns the value of an option. */
  Optional<String> option(String name);

  /** Returns whether a switch was given. */
  boolean on(String name);

  /** Returns a file name as seen from where the person stands. */
  Path file(String name);

  /** Returns what is piped in. */
  InputStream in();

  /** Returns where a command that streams writes; others return a {@link Reply}. */
  PrintStream out();

  /** Returns whether the answer is for machines. */
  boolean json();
}
