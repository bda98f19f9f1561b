package org.fettlebench.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.framework.wiring.BundleRequirement;
import org.osgi.framework.wiring.BundleRevision;
import org.osgi.framework.wiring.FrameworkWiring;
import org.osgi.resource.Namespace;
import org.osgi.service.component.runtime.ServiceComponentRuntime;
import org.osgi.service.component.runtime.dto.ComponentConfigurationDTO;
import org.osgi.service.component.runtime.dto.ComponentDescriptionDTO;
import org.osgi.service.component.runtime.dto.UnsatisfiedReferenceDTO;

/** Says which bundles are not resolved and which components wait, and for what. */
public final class ServiceDoctor {
  private final BundleContext context;
  private final List<String> lines = new ArrayList<>();

  private ServiceDoctor(BundleContext context) {
    this.context = context;
  }

  /** Returns the findings, one a line; a line that says so if nothing is wrong. */
  public static String report(BundleContext systemContext) {
    ServiceDoctor doctor = new ServiceDoctor(systemContext);
    Stream.of(systemContext.getBundles()).forEach(doctor::bundle);
    doctor.components();
    return doctor.lines.isEmpty() ? "nothing is unsatisfied" : String.join("\n", doctor.lines);
  }

  private void bundle(Bundle bundle) {
    if (bundle.getState() == Bundle.INSTALLED) {
      lines.add(bundle + " is not resolved");
      bundle.adapt(BundleRevision.class).getDeclaredRequirements(null).stream()
          .filter(this::lacking)
          .forEach(requirement -> lines.add("  lacks " + requirement));
    } else if (bundle.getState() == Bundle.RESOLVED) {
      lines.add(bundle + " is not started");
    }
  }

  private boolean lacking(BundleRequirement requirement) {
    FrameworkWiring wiring = context.getBundle(0).adapt(FrameworkWiring.class);
    return !"optional"
            .equals(requirement.getDirectives().get(Namespace.REQUIREMENT_RESOLUTION_DIRECTIVE))
        && !"dynamic"
            .equals(requirement.getDirectives().get(Namespace.REQUIREMENT_RESOLUTION_DIRECTIVE))
        && wiring.findProviders(requirement).isEmpty();
  }

  private void components() {
    ServiceReference<ServiceComponentRuntime> reference =
        context.getServiceReference(ServiceComponentRuntime.class);
    if (reference == null) {
      lines.add("Declarative Services are not running");
      return;
    }
    ServiceComponentRuntime runtime = context.getService(reference);
    for (ComponentDescriptionDTO component : runtime.getComponentDescriptionDTOs()) {
      runtime.getComponentConfigurationDTOs(component).forEach(this::component);
    }
  }

  private void component(ComponentConfigurationDTO configuration) {
    String name = configuration.description.implementationClass;
    for (UnsatisfiedReferenceDTO waiting : configuration.unsatisfiedReferences) {
      Stream.of(configuration.description.references)
          .filter(reference -> reference.name.equals(waiting.name))
          .forEach(reference -> lines.add(name + " waits for " + reference.interfaceName));
    }
    if (configuration.failure != null) {
      lines.add(name + " failed: " + configuration.failure);
    }
  }
}
