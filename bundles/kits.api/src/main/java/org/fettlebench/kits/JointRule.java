package org.fettlebench.kits;

import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * A rule that adds findings to a joint. Registered as a service by any bundle and asked for each
 * joint whose thread is known, on any thread. What it throws, and a null that it returns, is
 * reported against its module, and the check goes on without it.
 */
@ConsumerType
public interface JointRule {
  /** Returns the rule's name for people, such as "club rule: least edge". */
  String title();

  /** Returns what the rule finds; empty when it has nothing to say. Must not keep any state. */
  List<Finding> look(JointCase joint);
}
