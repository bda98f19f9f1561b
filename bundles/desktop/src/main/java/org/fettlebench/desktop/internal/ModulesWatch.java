package org.fettlebench.desktop.internal;

import org.fettlebench.modules.ModulesListener;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Has the page in front refreshed when modules or tables changed. */
@Component
public final class ModulesWatch implements ModulesListener {
  private final OpenWindow window;

  /** Made by Declarative Services. */
  @Activate
  public ModulesWatch(@Reference OpenWindow window) {
    this.window = window;
  }

  @Override
  public void modulesChanged() {
    window.tell(MainWindow::refreshPage);
  }
}
