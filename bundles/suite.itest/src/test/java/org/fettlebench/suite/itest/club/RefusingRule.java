package org.fettlebench.suite.itest.club;

import java.util.List;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.JointRule;

/** A rule of a club's module that throws at every joint. */
public final class RefusingRule implements JointRule {
  /** What it says. */
  public static final String SAID = "this rule looks at no joint";

  @Override
  public String title() {
    return "club rule: refusing";
  }

  @Override
  public List<Finding> look(JointCase joint) {
    throw new IllegalStateException(SAID);
  }
}
