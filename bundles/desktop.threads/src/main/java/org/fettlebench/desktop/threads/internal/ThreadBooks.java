package org.fettlebench.desktop.threads.internal;

import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.identify.ThreadIdentifier;
import org.fettlebench.threads.strength.Materials;
import org.fettlebench.threads.strength.ThreadStrength;
import org.fettlebench.threads.wires.MeasuringWires;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** What is worked out of threads beyond their sizes, gathered for the page. */
@Component(service = ThreadBooks.class)
public final class ThreadBooks {
  private final ThreadClasses classes;
  private final ThreadIdentifier identifier;
  private final Materials materials;
  private final ThreadStrength strength;
  private final MeasuringWires wires;

  /** Made by Declarative Services. */
  @Activate
  public ThreadBooks(
      @Reference ThreadClasses classes,
      @Reference ThreadIdentifier identifier,
      @Reference Materials materials,
      @Reference ThreadStrength strength,
      @Reference MeasuringWires wires) {
    this.classes = classes;
    this.identifier = identifier;
    this.materials = materials;
    this.strength = strength;
    this.wires = wires;
  }

  ThreadClasses classes() {
    return classes;
  }

  ThreadIdentifier identifier() {
    return identifier;
  }

  Materials materials() {
    return materials;
  }

  ThreadStrength strength() {
    return strength;
  }

  MeasuringWires wires() {
    return wires;
  }
}
