package org.fettlebench.threads.internal;

import static org.fettlebench.threads.internal.Figures.figure;

import java.util.Set;
import org.fettlebench.measure.Length;
import org.fettlebench.testkit.published.PublishedRow;
import org.fettlebench.testkit.published.PublishedTable;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ThreadSide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;

/** Limits of Unified threads against printed ones, to half a unit of the last printed digit. */
@TestInstance(Lifecycle.PER_CLASS)
class PublishedUnifiedLimitsTest {
  /** Roots of screws that efunda prints 0.0001 in below D - allowance - 1.19078 p. */
  private static final Set<String> ROOTS_OFF =
      Set.of("#3-48 UNC 2A", "15/16-16 UN 2A", "15/16-16 UN 3A");

  private final ThreadRegistry threads = OurThreads.fresh();

  @Test
  void limits() {
    PublishedTable.read(PublishedUnifiedLimitsTest.class, "unified-limits.csv")
        .apart("words", "check_note")
        .holdEach(this::limits);
  }

  private void limits(PublishedRow row) {
    row.cell("source");
    String designation = row.cell("size") + "-" + row.cell("tpi") + " " + row.cell("series");
    // The title of that row is not the thread it works out.
    String meant = says(row, "the title says 28 tpi") ? "19/64-36 UNS" : designation;
    for (String threadClass : row.cell("class").split("/")) {
      if (threadClass.endsWith("A")) {
        screw(row, meant + " " + threadClass, limits(meant, threadClass, ThreadSide.EXTERNAL));
      } else {
        nut(row, limits(meant, threadClass, ThreadSide.INTERNAL));
      }
    }
  }

  private LimitsOfThread limits(String designation, String threadClass, ThreadSide side) {
    return Figures.limits(threads, designation, threadClass, side);
  }

  private static boolean says(PublishedRow row, String words) {
    return row.cell("check_note").contains(words);
  }

  private static void screw(PublishedRow row, String name, LimitsOfThread screw) {
    row.check("ext_major_max_in", figure(screw, "major most").inches());
    row.check("ext_major_min_in", figure(screw, "major least").inches());
    row.check("ext_pitch_max_in", figure(screw, "effective most").inches());
    row.checkUnless(
        says(row, "off: d2min"),
        "ext_pitch_min_in",
        figure(screw, "effective least").inches(),
        "0.0001 in above either way of working it out");
    double root = figure(screw, "minor most").inches();
    row.checkUnless(ROOTS_OFF.contains(name), "ext_minor_unr_max_in", root, "below the formula");
    Length allowance = screw.thread().major().minus(figure(screw, "major most"));
    row.check("allowance_in", Math.round(allowance.inches() * 1e4) / 1e4);
    otherMinor(row, screw);
  }

  /** What lists call minor diameter of a screw differs by list. */
  private static void otherMinor(PublishedRow row, LimitsOfThread screw) {
    String source = row.cell("source");
    double pitch = screw.thread().pitch().inches();
    double allowance = screw.thread().major().minus(figure(screw, "major most")).inches();
    double old = screw.thread().major().inches() - allowance - 1.226869 * pitch;
    if (source.startsWith("microadvances")) {
      String why = "the older 2A minor diameter, D - allowance - 1.2269 p, which is not shown";
      row.checkWithin("ext_minor_other_in", old, 1e-4, why);
    } else if (source.startsWith("scribd 119909490")) {
      double least = figure(screw, "minor least").inches();
      row.checkWithin("ext_minor_other_in", least, 1e-4, "rounds before and after");
    } else {
      // The handbook's worked calculations: the flat root of a UN screw, D - allowance - 1.0825 p.
      double flat = screw.thread().major().inches() - allowance - 1.08253175 * pitch;
      row.check("ext_minor_other_in", flat);
    }
  }

  private static void nut(PublishedRow row, LimitsOfThread nut) {
    row.check("int_minor_min_in", figure(nut, "minor least").inches());
    row.check("int_minor_max_in", figure(nut, "minor most").inches());
    row.check("int_pitch_min_in", figure(nut, "effective least").inches());
    row.checkUnless(
        says(row, "off: D2max"),
        "int_pitch_max_in",
        figure(nut, "effective most").inches(),
        "digits exchanged or repeated");
    row.check("int_major_min_in", figure(nut, "major least").inches());
  }
}
