package org.fettlebench.modules.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;
import org.osgi.service.component.runtime.ServiceComponentRuntime;
import org.osgi.service.component.runtime.dto.ComponentConfigurationDTO;
import org.osgi.service.component.runtime.dto.ComponentDescriptionDTO;
import org.osgi.service.component.runtime.dto.ReferenceDTO;
import org.osgi.service.component.runtime.dto.UnsatisfiedReferenceDTO;

/** Asks Declarative Services which parts of a started bundle do not work, and why. */
final class Parts {
  private static final String CAUSE = "Caused by: ";

  private final ServiceComponentRuntime runtime;

  Parts(ServiceComponentRuntime runtime) {
    this.runtime = runtime;
  }

  /** Returns one sentence for each thing that is wrong; empty if all is well. */
  List<String> wrong(Bundle bundle) {
    List<String> wrong = new ArrayList<>();
    for (ComponentDescriptionDTO part : runtime.getComponentDescriptionDTOs(bundle)) {
      runtime.getComponentConfigurationDTOs(part).forEach(made -> look(part, made, wrong));
    }
    return wrong;
  }

  private static void look(
      ComponentDescriptionDTO part, ComponentConfigurationDTO made, List<String> wrong) {
    String name = part.implementationClass.substring(part.implementationClass.lastIndexOf('.') + 1);
    for (UnsatisfiedReferenceDTO waiting : made.unsatisfiedReferences) {
      wrong.add(
          "its part " + name + " waits for " + wanted(part, waiting) + ", which nothing offers");
    }
    if (made.failure != null) {
      wrong.add("its part " + name + " did not start: " + reason(made.failure));
    }
  }

  private static String wanted(ComponentDescriptionDTO part, UnsatisfiedReferenceDTO waiting) {
    String type =
        Stream.of(part.references)
            .filter(reference -> reference.name.equals(waiting.name))
            .map((ReferenceDTO reference) -> reference.interfaceName)
            .findFirst()
            .orElse(waiting.name);
    return waiting.target == null ? type : type + " with " + waiting.target;
  }

  /** Returns the innermost cause of a stack trace, which is what the module itself said. */
  private static String reason(String stackTrace) {
    int cause = stackTrace.lastIndexOf(CAUSE);
    String from = cause < 0 ? stackTrace : stackTrace.substring(cause + CAUSE.length());
    return from.lines().findFirst().orElse(stackTrace);
  }
}
