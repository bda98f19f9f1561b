package org.fettlebench.desktop.internal;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.eclipse.swt.widgets.Display;
import org.fettlebench.modules.Faults;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Shows the window until it is closed; called by the launcher on the thread of its display. */
@Component(service = Callable.class, property = "fettlebench.main=desktop")
public final class DesktopMain implements Callable<Integer> {
  private final BundleContext context;
  private final PageRegistry pages;
  private final Faults faults;
  private final OpenWindow open;

  /** Made by Declarative Services. */
  @Activate
  public DesktopMain(
      BundleContext context,
      @Reference PageRegistry pages,
      @Reference Faults faults,
      @Reference OpenWindow open) {
    this.context = context;
    this.pages = pages;
    this.faults = faults;
    this.open = open;
  }

  @Override
  public Integer call() {
    Wishes wishes = Wishes.from(context::getProperty);
    Memory memory = new Memory(wishes.data().resolve("desktop.properties"));
    if (wishes.picture().isPresent()) {
      memory.keepNothing();
      wishes.pictureLook().forEach(memory::put);
    }
    MainWindow window = new MainWindow(Display.getCurrent(), wishes, memory, faults);
    open.set(Optional.of(window));
    try {
      window.run(pages);
      return 0;
    } finally {
      open.set(Optional.empty());
    }
  }
}
