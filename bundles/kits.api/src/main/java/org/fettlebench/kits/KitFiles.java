package org.fettlebench.kits;

import java.nio.file.Path;
import java.util.function.UnaryOperator;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.measure.LengthUnit;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Reads kit, seat, pattern and casting files, and writes seat and casting files. What a file may
 * say is in the suite's page on file formats.
 */
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

  /**
   * Reads a seat file with all that it says besides the question.
   *
   * @param file name for messages
   * @param text the whole text
   * @throws FaultyFileException with every fault of the file
   */
  SeatFile readSeatFile(String file, String text);

  /**
   * Writes a seat file that reads back as the same, every length to the nanometre.
   *
   * @param unit in which lengths are written
   */
  String writeSeat(SeatFile file, LengthUnit unit);

  /**
   * Reads a pattern file: the same holes in two parts.
   *
   * @param file name for messages
   * @param text the whole text
   * @throws FaultyFileException with every fault of the file
   */
  PatternFile readPattern(String file, String text);

  /**
   * Reads a pattern file, its ways of placing holes as they are known now.
   *
   * @param asKnown turns a way of the tables into what is known of it, such as what the club
   *     measured
   * @throws FaultyFileException with every fault of the file
   */
  PatternFile readPattern(String file, String text, UnaryOperator<HoleMethod> asKnown);

  /**
   * Reads a casting file: a rough casting as measured, and what is to be finished out of it.
   *
   * @param file name for messages
   * @param text the whole text
   * @throws FaultyFileException with every fault of the file
   */
  CastingFile readCasting(String file, String text);

  /**
   * Writes a casting file that reads back as the same, every length to the nanometre; faces come
   * first, then bores, then bosses.
   *
   * @param unit in which lengths are written
   */
  String writeCasting(CastingFile file, LengthUnit unit);
}
