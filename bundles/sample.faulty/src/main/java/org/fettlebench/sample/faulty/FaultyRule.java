package org.fettlebench.sample.faulty;

import java.util.List;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.JointRule;
import org.osgi.service.component.annotations.Component;

/** A rule that throws at every joint. */
@Component
public final class FaultyRule implements JointRule {
  @Override
  public String title() {
    return "faulty rule";
  }

  @Override
  public List<Finding> look(JointCase joint) {
    throw new IllegalStateException("the faulty rule cannot look at " + joint.joint().name());
  }
}
