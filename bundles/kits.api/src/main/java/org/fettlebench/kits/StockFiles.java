package org.fettlebench.kits;

import java.util.List;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.StockLine;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Reads and writes stock lists (CSV with the columns kind, name, thread, style, diameter, length,
 * material, place, condition, quantity, low-mark), and goods as people say them.
 */
@ProviderType
public interface StockFiles {
  /**
   * Reads a stock list. Goods without a name get one as {@link #readGoods} gives it.
   *
   * @param file name for messages
   * @param text the whole text
   * @return one receipt a row, in file order
   * @throws FaultyFileException with every fault of the file
   */
  List<Receipt> readStock(String file, String text);

  /**
   * Writes stock lines as a list that {@link #readStock} reads; lines of quantity 0 are left out.
   */
  String write(List<StockLine> lines);

  /**
   * Reads goods from one line as a person says them: {@code 2 BA hexagon x 1/2 in steel}, {@code
   * drill 5/32}, {@code tap 2 BA taper}. Threads and sizes come out in their usual writing.
   *
   * @throws IllegalArgumentException if that cannot be understood; the message says what and the
   *     remedy
   */
  Goods readGoods(String words);
}
