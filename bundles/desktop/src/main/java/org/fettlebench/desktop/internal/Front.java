package org.fettlebench.desktop.internal;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Brings the window to the front, for the launcher, when a second start finds this one. */
@Component(service = Runnable.class, property = "fettlebench.main=front")
public final class Front implements Runnable {
  private final OpenWindow window;

  /** Made by Declarative Services. */
  @Activate
  public Front(@Reference OpenWindow window) {
    this.window = window;
  }

  @Override
  public void run() {
    window.tell(MainWindow::toFront);
  }
}
