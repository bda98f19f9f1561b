package org.fettlebench.paper;

import java.io.IOException;
import java.io.OutputStream;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.KitReport;
import org.fettlebench.measure.LengthUnit;
import org.osgi.annotation.versioning.ProviderType;

/** Puts what a kit check says on paper of the size A4, as PDF. */
@ProviderType
public interface BenchCards {
  /**
   * Writes the card of one joint: one page, upright. What does not find room on it is named there,
   * and stands in the report of the kit.
   *
   * @param report of the kit, for its name and cautions
   * @param joint a joint of that report
   * @param first unit shown first where both are shown
   * @param pdf takes the bytes; is not closed
   * @throws IOException if the stream cannot take them
   * @throws IllegalArgumentException if the joint is not of the report
   */
  void jointCard(KitReport report, JointReport joint, LengthUnit first, OutputStream pdf)
      throws IOException;

  /**
   * Writes the report of a whole kit: the answer, what is missing, then every joint with its
   * findings, cures and what to fetch, on as many pages as it takes.
   *
   * @param report what to write
   * @param first unit shown first where both are shown
   * @param pdf takes the bytes; is not closed
   * @throws IOException if the stream cannot take them
   */
  void kitReport(KitReport report, LengthUnit first, OutputStream pdf) throws IOException;
}
