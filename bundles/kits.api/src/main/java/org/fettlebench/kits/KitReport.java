package org.fettlebench.kits;

import java.util.List;
import org.fettlebench.fits.Verdict;

/**
 * What a kit check says of the whole kit.
 *
 * @param kit the kit
 * @param joints in file order
 * @param shortages what to buy or find before beginning, one line each kind of thing
 * @param cautions what to mind in the work that the kit plans; said once for the whole kit
 */
public record KitReport(
    Kit kit, List<JointReport> joints, List<Shortage> shortages, List<Finding> cautions) {
  /** Copies what could change. */
  public KitReport {
    joints = List.copyOf(joints);
    shortages = List.copyOf(shortages);
    cautions = List.copyOf(cautions);
  }

  /** Makes a report without cautions. */
  public KitReport(Kit kit, List<JointReport> joints, List<Shortage> shortages) {
    this(kit, joints, shortages, List.of());
  }

  /** Returns how many joints have a verdict. */
  public int count(Verdict verdict) {
    return (int)
        joints.stream()
            .filter(joint -> joint.verdict().filter(verdict::equals).isPresent())
            .count();
  }

  /** Returns how many joints have a supply status. */
  public int count(JointReport.Supply supply) {
    return (int) joints.stream().filter(joint -> joint.supply() == supply).count();
  }

  /** Returns how many joints have no measured seat. */
  public int unmeasured() {
    return (int) joints.stream().filter(joint -> joint.verdict().isEmpty()).count();
  }

  /** Returns whether anything does not fit or is short, so that the work cannot simply begin. */
  public boolean wanting() {
    return !shortages.isEmpty() || joints.stream().anyMatch(JointReport::wanting);
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
