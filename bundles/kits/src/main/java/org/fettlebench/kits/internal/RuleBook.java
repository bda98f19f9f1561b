package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.holes.chance.Chances;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.JointRule;
import org.fettlebench.modules.Faults;

/** The suite's own rules and those of modules, asked in a fixed order; a bad one is left out. */
final class RuleBook {
  private final List<JointRule> rules = new ArrayList<>();
  private final Faults faults;

  RuleBook(Heads heads, Chances chances, List<JointRule> added, Faults faults) {
    this.faults = faults;
    rules.addAll(
        List.of(
            new SeatRule(chances),
            new LengthRule(heads),
            new ClearanceRule(),
            new TappingRule(),
            new BlindHoleRule(),
            new PressureRule()));
    added.stream()
        .sorted(Comparator.comparing(rule -> rule.getClass().getName()))
        .forEach(rules::add);
  }

  /** Returns what all rules find, gravest first. */
  List<Finding> look(JointCase joint) {
    List<Finding> findings = new ArrayList<>();
    rules.forEach(rule -> findings.addAll(look(rule, joint)));
    findings.sort(Comparator.comparing(Finding::weight).reversed());
    return findings;
  }

  private List<Finding> look(JointRule rule, JointCase joint) {
    try {
      return List.copyOf(rule.look(joint));
    } catch (RuntimeException | LinkageError | AssertionError | StackOverflowError thrown) {
      faults.report(rule, "checking joint " + joint.joint().name(), thrown);
      return List.of(unheard(rule));
    }
  }

  /** Whoever relies on a club's rule must see that it did not speak. */
  private static Finding unheard(JointRule rule) {
    return Finding.of(
        Finding.Weight.CAUTION,
        "club rule",
        "The rule \""
            + name(rule)
            + "\" failed and was left out here; the list of modules says what it said.");
  }

  private static String name(JointRule rule) {
    try {
      return rule.title();
    } catch (RuntimeException | LinkageError | AssertionError | StackOverflowError thrown) {
      // The failure itself was reported already; its class still tells whose rule it is.
      return rule.getClass().getSimpleName();
    }
  }
}
