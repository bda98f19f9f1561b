import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** The least window there can be: what the suite's start is measured against. */
public final class BareWindow {
  private BareWindow() {}

  /** Opens a window with one label, tells when it was painted, closes it. */
  public static void main(String[] args) {
    System.setProperty("org.eclipse.swt.internal.SessionManagerDBus.disable", "true");
    long started = Long.getLong("fettlebench.bench");
    Display display = new Display();
    Shell shell = new Shell(display);
    shell.setLayout(new FillLayout());
    new Label(shell, SWT.NONE).setText("bare");
    shell.setSize(1280, 800);
    boolean[] painted = {false};
    display.addFilter(
        SWT.Paint,
        event -> {
          if (!painted[0]) {
            painted[0] = true;
            display.asyncExec(
                () -> {
                  long after = System.currentTimeMillis() - started;
                  long processor =
                      ProcessHandle.current().info().totalCpuDuration().orElseThrow().toMillis();
                  System.err.println(
                      "milestone " + after + " ms, processor " + processor + " ms window usable");
                  shell.close();
                });
          }
        });
    shell.open();
    while (!shell.isDisposed()) {
      if (!display.readAndDispatch()) {
        display.sleep();
      }
    }
    display.dispose();
  }
}
