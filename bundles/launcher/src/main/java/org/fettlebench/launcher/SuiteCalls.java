package org.fettlebench.launcher;

import java.io.InputStream;
import java.io.PrintStream;
import java.util.List;

/** What a running suite does for calls from outside. */
interface SuiteCalls {
  /** Runs one call of the command line and returns its exit status. */
  int run(Call call);

  /** Brings the window to the front; throws {@link LaunchException} when there is none. */
  void front();

  /**
   * One call of the command line.
   *
   * @param words the words after the program's name
   * @param directory where the person stands
   * @param in standard input
   * @param out standard output
   * @param err standard error
   */
  record Call(
      List<String> words, String directory, InputStream in, PrintStream out, PrintStream err) {}
}
