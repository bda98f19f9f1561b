package org.fettlebench.desktop.widgets;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import org.eclipse.swt.SWT;

/** Asks the platform for its dark menus, buttons and scroll bars, where SWT knows how. */
final class NativeTheme {
  private static final Logger LOG = System.getLogger(NativeTheme.class.getName());

  private NativeTheme() {}

  /** Asks for it; a platform that cannot keeps its own colours, which harms nothing. */
  static void prefer(boolean dark) {
    String method = SWT.getPlatform().equals("gtk") ? "setDarkThemePreferred" : "setTheme";
    String platform = SWT.getPlatform();
    try {
      // Not part of SWT's public interface; there is no other way to these colours.
      Class<?> os =
          SWT.class.getClassLoader().loadClass("org.eclipse.swt.internal." + platform + ".OS");
      os.getMethod(method, boolean.class).invoke(null, dark);
    } catch (ReflectiveOperationException | LinkageError unknown) {
      LOG.log(Level.DEBUG, "no dark theme on {0}: {1}", platform, unknown.toString());
    }
  }
}
