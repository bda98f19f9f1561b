package org.fettlebench.command.internal;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.fettlebench.command.Reply;

/** Prints answers to where the call came from, in UTF-8 whatever the stream is set to. */
final class Printer {
  private final PrintStream out;
  private final PrintStream err;
  private final boolean json;

  Printer(PrintStream out, PrintStream err, boolean json) {
    this.out = out;
    this.err = err;
    this.json = json;
  }

  /** Returns a stream for commands that write as they go. */
  PrintStream stream() {
    return new PrintStream(out, true, StandardCharsets.UTF_8);
  }

  /** Prints an answer and returns its exit status. */
  int print(Reply reply) {
    String text = json ? JsonText.of(reply.data()) : reply.text();
    // A command that has written its own stream has nothing left to say.
    if (!text.isEmpty()) {
      line(out, text);
    }
    return reply.status().code();
  }

  /** Prints what is wrong, as words and where asked as an object, and returns the exit status. */
  int complain(Errors error) {
    if (json) {
      line(out, JsonText.of(error.data()));
    }
    line(err, error.text());
    return Runner.BAD;
  }

  private static void line(PrintStream stream, String text) {
    byte[] bytes = (text + "\n").getBytes(StandardCharsets.UTF_8);
    stream.write(bytes, 0, bytes.length);
    stream.flush();
  }
}
