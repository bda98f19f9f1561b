package org.fettlebench.desktop.internal;

import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Monitor;
import org.eclipse.swt.widgets.Shell;

/** Where the window stands on the screen, remembered, and never off the screens there are. */
final class Placement {
  private static final int LEAST = 400;

  private final Shell shell;
  private final Memory memory;

  Placement(Shell shell, Memory memory) {
    this.shell = shell;
    this.memory = memory;
  }

  void restore() {
    Rectangle screen = shell.getDisplay().getPrimaryMonitor().getClientArea();
    Rectangle usual =
        new Rectangle(
            screen.x + screen.width / 20,
            screen.y + screen.height / 20,
            Math.min(1280, screen.width * 9 / 10),
            Math.min(860, screen.height * 9 / 10));
    Rectangle kept =
        new Rectangle(
            memory.number("window.x", usual.x),
            memory.number("window.y", usual.y),
            memory.number("window.width", usual.width),
            memory.number("window.height", usual.height));
    shell.setBounds(visible(kept) ? kept : usual);
    shell.setMaximized(memory.get("window.maximised", "no").equals("yes"));
  }

  private boolean visible(Rectangle bounds) {
    if (bounds.width < LEAST || bounds.height < LEAST) {
      return false;
    }
    for (Monitor monitor : shell.getDisplay().getMonitors()) {
      Rectangle shared = monitor.getClientArea().intersection(bounds);
      if (shared.width > LEAST / 2 && shared.height > LEAST / 2) {
        return true;
      }
    }
    return false;
  }

  void keep() {
    memory.put("window.maximised", shell.getMaximized() ? "yes" : "no");
    if (!shell.getMaximized() && !shell.getMinimized()) {
      Rectangle bounds = shell.getBounds();
      memory.put("window.x", String.valueOf(bounds.x));
      memory.put("window.y", String.valueOf(bounds.y));
      memory.put("window.width", String.valueOf(bounds.width));
      memory.put("window.height", String.valueOf(bounds.height));
    }
  }
}
