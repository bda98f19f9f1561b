package org.fettlebench.desktop.internal;

import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Shell;

/** Waits until nothing moves in the window any more, then takes a picture of it. */
final class PictureTaker {
  private static final int LOOK_MS = 150;
  private static final int CALM_LOOKS = 6;

  private final Shell shell;
  private final BooleanSupplier calm;
  private final Runnable taken;
  private final Path file;
  private int calmLooks;

  PictureTaker(Shell shell, BooleanSupplier calm, Path file, Runnable taken) {
    this.shell = shell;
    this.calm = calm;
    this.file = file;
    this.taken = taken;
  }

  void start() {
    shell.getDisplay().timerExec(LOOK_MS, this::look);
  }

  private void look() {
    if (shell.isDisposed()) {
      return;
    }
    calmLooks = calm.getAsBoolean() ? calmLooks + 1 : 0;
    if (calmLooks < CALM_LOOKS) {
      start();
    } else {
      write();
      taken.run();
    }
  }

  private void write() {
    Rectangle bounds = shell.getBounds();
    Image image = new Image(shell.getDisplay(), bounds.width, bounds.height);
    GC gc = new GC(shell.getDisplay());
    gc.copyArea(image, bounds.x, bounds.y);
    gc.dispose();
    ImageLoader loader = new ImageLoader();
    loader.data = new ImageData[] {image.getImageData(100)};
    loader.save(file.toString(), SWT.IMAGE_PNG);
    image.dispose();
  }
}
