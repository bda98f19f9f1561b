package org.fettlebench.kits;

import org.fettlebench.fits.SeatQuestion;
import org.osgi.annotation.versioning.ProviderType;

/** Reads kit and seat files. */
@ProviderType
public interface KitFiles {
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
