package org.fettlebench.launcher;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Starts the suite: {@code desktop} opens the window, all other words are a call of the command
 * line. {@code --data DIR} anywhere names the data directory.
 */
public final class Main {
  /** Exit status: bad input or use. */
  static final int BAD_USE = 2;

  /** Exit status: the suite itself cannot run here, or its data are held by another. */
  static final int CANNOT_RUN = 3;

  private Main() {}

  /** Runs the suite and ends the process with its exit status. */
  @SuppressWarnings("checkstyle:RegexpSinglelineJava")
  public static void main(String[] args) {
    Milestones.reached("main entered");
    PrintStream out = print(FileDescriptor.out);
    PrintStream err = print(FileDescriptor.err);
    int status = run(List.of(args), out, err);
    out.flush();
    err.flush();
    Milestones.reached("closed");
    System.exit(status);
  }

  private static PrintStream print(FileDescriptor stream) {
    // Windows tells its console's code page; elsewhere terminals and files are UTF-8.
    Charset charset =
        Surroundings.here().windows() ? Charset.defaultCharset() : StandardCharsets.UTF_8;
    return new PrintStream(new FileOutputStream(stream), true, charset);
  }

  static int run(List<String> args, PrintStream out, PrintStream err) {
    Words words;
    try {
      words = Words.read(args);
    } catch (LaunchException e) {
      err.println(e.getMessage());
      return BAD_USE;
    }
    try {
      return run(
          words,
          new SuiteCalls.Call(words.rest(), System.getProperty("user.dir"), System.in, out, err));
    } catch (LaunchException e) {
      err.println(e.getMessage());
      return CANNOT_RUN;
    }
  }

  private static int run(Words words, SuiteCalls.Call call) {
    String open = System.getProperty("fettlebench.open", "");
    DataDirectory data =
        DataDirectory.find(
            words.data(), open.equals("demo") ? "demo" : "club", Surroundings.here());
    data.make();
    Distribution suite = Distribution.here();
    return words.desktop()
        ? new DesktopMode(data, suite).run(call)
        : new CommandMode(data, suite).run(call);
  }
}
