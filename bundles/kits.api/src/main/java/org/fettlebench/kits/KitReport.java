package org.fettlebench.kits;

import java.util.List;

/**
 * What a kit check says of the whole kit.
 *
 * @param kit the kit
 * @param joints in file order
 * @param shortages what to buy or find before beginning, one line each kind of thing
 */
public record KitReport(Kit kit, List<JointReport> joints, List<Shortage> shortages) {
  /** Copies what could change. */
  public KitReport {
    joints = List.copyOf(joints);
    shortages = List.copyOf(shortages);
  }

  /**
   * Something that is missing.
   *
   * @param what its name
   * @param role what it is for
   * @param needed how many the kit needs in all
   * @param present how many are in the bag and in stock
   * @param why out on loan to whom, worn, not held; in words
   * @param joints names of the joints that need it
   */
  public record Shortage(
      String what,
      JointReport.Fetch.Role role,
      int needed,
      int present,
      String why,
      List<String> joints) {
    /** Copies what could change. */
    public Shortage {
      joints = List.copyOf(joints);
    }
  }
}
