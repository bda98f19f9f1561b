package org.fettlebench.desktop.internal;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.osgi.service.component.annotations.Component;

/** The window while it is open, for whoever has something to tell it from another thread. */
@Component(service = OpenWindow.class)
public final class OpenWindow {
  private final AtomicReference<Optional<MainWindow>> window =
      new AtomicReference<>(Optional.empty());

  void set(Optional<MainWindow> newWindow) {
    window.set(newWindow);
  }

  /** Has something done by the open window on its own thread; nothing when none is open. */
  void tell(Consumer<MainWindow> message) {
    window.get().ifPresent(open -> open.later(() -> message.accept(open)));
  }
}
