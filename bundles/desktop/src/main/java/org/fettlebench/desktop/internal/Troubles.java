package org.fettlebench.desktop.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.fettlebench.desktop.Page;
import org.fettlebench.modules.Faults;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Catches what pages throw: logged, reported against their module, told in words. */
final class Troubles {
  private static final Logger LOG = LoggerFactory.getLogger(Troubles.class);

  private final Faults faults;
  private final Supplier<List<Page>> pages;
  private final Consumer<String> complain;

  /**
   * Makes it.
   *
   * @param pages those that stand in the window, to find whose fault something was
   * @param complain tells a person
   */
  Troubles(Faults faults, Supplier<List<Page>> pages, Consumer<String> complain) {
    this.faults = faults;
    this.pages = pages;
    this.complain = complain;
  }

  /** Does what a page offers; returns what it threw after reporting that. */
  Optional<Throwable> guard(Page page, String doing, Runnable action) {
    try {
      action.run();
      return Optional.empty();
    } catch (RuntimeException | Error thrown) {
      report(page, doing, thrown);
      return Optional.of(thrown);
    }
  }

  /** Reports what a page threw against its module. */
  void report(Page page, String doing, Throwable thrown) {
    LOG.error("{} threw while {}", page.getClass().getName(), doing, thrown);
    faults.report(page, doing, thrown);
  }

  /** Takes what reached the window's thread from anywhere, finds whose it is, and tells. */
  void unexpected(Throwable thrown) {
    Optional<Page> page = pages.get().stream().filter(p -> threw(p, thrown)).findFirst();
    page.ifPresentOrElse(
        p -> report(p, "answering mouse or keyboard", thrown),
        () -> LOG.error("unexpected in the window", thrown));
    complain.accept(
        "Something went wrong that should not: "
            + words(thrown)
            + ". Nothing else is harmed; the log says more.");
  }

  private static boolean threw(Page page, Throwable thrown) {
    String home = page.getClass().getPackageName() + ".";
    for (StackTraceElement step : thrown.getStackTrace()) {
      if (step.getClassName().startsWith(home)) {
        return true;
      }
    }
    return thrown.getCause() != null && threw(page, thrown.getCause());
  }

  /** Returns whether a failure is a fault of the code rather than words meant for a person. */
  static boolean isFault(Throwable thrown) {
    return thrown instanceof Error
        || thrown instanceof RuntimeException
            && thrown.getClass().getName().startsWith("java.lang.");
  }

  /** Returns what was thrown in words, never empty, without a full stop. */
  static String words(Throwable thrown) {
    String message = Optional.ofNullable(thrown.getMessage()).orElse("").strip();
    String words = message.isEmpty() ? thrown.getClass().getSimpleName() : message;
    return words.endsWith(".") ? words.substring(0, words.length() - 1) : words;
  }
}
