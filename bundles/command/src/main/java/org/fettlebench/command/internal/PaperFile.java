package org.fettlebench.command.internal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fettlebench.command.CommandException;

/** Writes papers and drawings to files, wholly or not at all. */
public final class PaperFile {
  private PaperFile() {}

  /** What writes a paper. */
  public interface Writing {
    /** Writes it. */
    void to(OutputStream out) throws IOException;
  }

  /**
   * Writes a paper.
   *
   * @throws CommandException if it cannot be written there
   */
  public static void write(Path file, Writing writing) {
    try {
      // Whole in memory first, so that a failure leaves no half a file.
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      writing.to(bytes);
      Files.write(file, bytes.toByteArray());
    } catch (IOException e) {
      throw new CommandException(
          "the paper cannot be written to "
              + file
              + ": "
              + e
              + "; name a file in a folder of yours",
          e);
    }
  }

  /**
   * Writes a text.
   *
   * @throws CommandException if it cannot be written there
   */
  public static void write(Path file, String text) {
    write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }
}
