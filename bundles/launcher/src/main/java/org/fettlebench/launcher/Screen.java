package org.fettlebench.launcher;

import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.MessageBox;
import org.eclipse.swt.widgets.Shell;

/** The screen; kept apart so that nothing of SWT is loaded for the command line. */
final class Screen {
  private final Display display;

  private Screen(Display display) {
    this.display = display;
  }

  /** Opens the screen for the calling thread, which must be the program's first. */
  static Screen open() {
    if (Surroundings.here().variable("DBUS_SESSION_BUS_ADDRESS").isEmpty()) {
      // SWT would try to start a bus, and complain on the terminal where it cannot.
      System.setProperty("org.eclipse.swt.internal.SessionManagerDBus.disable", "true");
    }
    try {
      Display.setAppName("Fettlebench");
      Screen screen = new Screen(new Display());
      Milestones.reached("display opened");
      return screen;
    } catch (SWTError | UnsatisfiedLinkError e) {
      throw new LaunchException(
          "No window can be opened here ("
              + e.getMessage()
              + "). The command line works without one: fettlebench --help",
          e);
    }
  }

  /** In a measurement, tells when the first window has been painted and then closes it. */
  void measure() {
    boolean[] painted = {false};
    display.addFilter(
        SWT.Paint,
        event -> {
          if (!painted[0]) {
            painted[0] = true;
            Milestones.reached("window first painted");
            display.asyncExec(this::endMeasurement);
          }
        });
  }

  private void endMeasurement() {
    Milestones.reached("window usable");
    display.timerExec(500, () -> closeAll());
  }

  private void closeAll() {
    for (Shell shell : display.getShells()) {
      if (!shell.isDisposed()) {
        shell.close();
      }
    }
  }

  /** Shows what keeps the suite from starting. */
  void complain(String text) {
    Shell shell = new Shell(display);
    MessageBox box = new MessageBox(shell, SWT.ICON_ERROR | SWT.OK);
    box.setText("Fettlebench cannot start");
    box.setMessage(text);
    box.open();
    shell.dispose();
  }

  void close() {
    if (!display.isDisposed()) {
      display.dispose();
    }
  }
}
