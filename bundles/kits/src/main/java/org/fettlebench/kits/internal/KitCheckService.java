package org.fettlebench.kits.internal;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fits.HoleMethods;
import org.fettlebench.fits.SeatException;
import org.fettlebench.fits.Seats;
import org.fettlebench.holes.chance.Chances;
import org.fettlebench.holes.chance.MethodEstimates;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Holdings;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointRule;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.KitCheck;
import org.fettlebench.kits.KitReport;
import org.fettlebench.modules.Faults;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/** Checks kits; rules of modules come and go while it works. */
@Component
public class KitCheckService implements KitCheck {
  private final Trade trade;
  private final Odds odds;
  private final Faults faults;
  private final List<JointRule> added = new CopyOnWriteArrayList<>();

  /** Takes what the check asks. */
  @Activate
  @SuppressWarnings("checkstyle:ParameterNumber")
  public KitCheckService(
      @Reference Threads threads,
      @Reference Heads heads,
      @Reference Drills drills,
      @Reference HoleChooser holes,
      @Reference HoleMethods methods,
      @Reference Seats seats,
      @Reference Chances chances,
      @Reference MethodEstimates estimates,
      @Reference Faults faults) {
    this.trade = new Trade(threads, heads, drills, holes, methods, seats);
    this.odds = new Odds(new ClubMethodsService(methods, estimates), chances);
    this.faults = faults;
  }

  /** Takes in a rule. */
  @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
  public void addRule(JointRule rule) {
    added.add(rule);
  }

  /** Lets a rule go. */
  public void removeRule(JointRule rule) {
    added.remove(rule);
  }

  @Override
  public KitReport check(Kit kit, Holdings holdings) {
    RuleBook rules = new RuleBook(trade.heads(), odds.chances(), added, faults);
    Examiner examiner = new Examiner(trade, odds, kit, holdings, rules);
    List<Exam> exams = kit.joints().stream().map(joint -> examine(examiner, joint)).toList();
    return new Sharing(trade, kit, holdings, exams, faults).report();
  }

  /** A joint that confuses the mathematics is a finding, not the end of the check. */
  private Exam examine(Examiner examiner, Joint joint) {
    try {
      return examiner.examine(joint);
    } catch (SeatException impossible) {
      // Figures of the kit that cannot be: for its person to mend, no fault of the suite.
      return refused(joint, impossible);
    } catch (RuntimeException broken) {
      faults.report(this, "checking joint " + joint.name(), broken);
      return refused(joint, broken);
    }
  }

  private static Exam refused(Joint joint, RuntimeException why) {
    return Exam.refused(
        joint,
        Finding.of(Finding.Weight.FAULT, "check", "It cannot be checked: " + why.getMessage()));
  }
}
