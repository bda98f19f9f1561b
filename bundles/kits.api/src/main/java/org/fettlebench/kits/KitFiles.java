package org.fettlebench.kits;

import java.nio.file.Path;
import org.fettlebench.fits.SeatQuestion;
import org.osgi.annotation.versioning.ProviderType;

/** Reads kit and seat files. What a file may say is in the suite's page on file formats. */
@ProviderType
public interface KitFiles {
  /**
   * Reads a file as text.
   *
   * @throws FaultyFileException if it is missing, unreadable, not UTF-8, binary, or larger than 4
   *     MB
   */
  String text(Path file);

  /**
   * Reads a kit file.
   *
   * @param file name for messages
   * @param text the whole text
   * @throws FaultyFileException with every fault of the file
   */
  Kit readKit(String file, String text);

  /**
   * Reads a seat file: one seat, its head and its method.
   *
   * @param file name for messages
   * @param text the whole text
   * @throws FaultyFileException with every fault of the file
   */
  SeatQuestion readSeat(String file, String text);
}
