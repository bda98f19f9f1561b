package org.fettlebench.desktop.modules.internal;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.VerdictMark;
import org.fettlebench.modules.Module;

/** Says what there is to say of modules. */
final class ModuleWords {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.UK).withZone(ZoneId.systemDefault());
  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("d MMM, HH:mm:ss", Locale.UK).withZone(ZoneId.systemDefault());

  private ModuleWords() {}

  /** Returns the one sentence that sums up the page. */
  static String summary(List<Module> modules) {
    List<String> ill =
        modules.stream().filter(m -> mark(m) == VerdictMark.STRUCK).map(Module::title).toList();
    long dropped = modules.stream().filter(Module::dropped).count();
    if (ill.size() == 1) {
      return "One does not work: " + ill.get(0);
    }
    if (ill.size() > 1) {
      return ill.size() + " do not work";
    }
    long warned = modules.stream().filter(m -> mark(m) == VerdictMark.HALF).count();
    if (warned > 0) {
      return Figures.count(warned, "module works but has", "modules work but have")
          + " gone wrong at something";
    }
    return "Everything works, "
        + (dropped == 0
            ? "no module added"
            : "with " + Figures.count(dropped, "module added", "modules added"));
  }

  /** Returns the shape beside a module's name. */
  static VerdictMark mark(Module module) {
    if (leftOut(module) || putAside(module)) {
      return VerdictMark.OPEN;
    }
    if (!module.working()) {
      return VerdictMark.STRUCK;
    }
    return module.faults().isEmpty() ? VerdictMark.TICK : VerdictMark.HALF;
  }

  static boolean leftOut(Module module) {
    return !module.working() && module.state().equals("left out");
  }

  /** Returns whether a newer version of it runs instead. */
  static boolean putAside(Module module) {
    return !module.working() && module.state().startsWith("put aside");
  }

  /** Returns what stands beside the shape: a word or two. */
  static String word(Module module) {
    return switch (mark(module)) {
      case TICK -> "works";
      case HALF -> "works, with faults";
      case STRUCK -> "does not work";
      case OPEN -> putAside(module) ? "put aside" : "left out";
    };
  }

  /** Returns what a module adds, counted by kind: {@code page, thread series ×2}. */
  static String adds(Module module) {
    Map<String, Long> kinds =
        module.contributions().stream()
            .map(text -> text.split(":", 2)[0].strip())
            .collect(
                Collectors.groupingBy(kind -> kind, LinkedHashMap::new, Collectors.counting()));
    return kinds.entrySet().stream()
        .map(kind -> kind.getKey() + (kind.getValue() > 1 ? " \u00d7" + kind.getValue() : ""))
        .collect(Collectors.joining(", "));
  }

  static String by(Module module) {
    if (!module.vendor().isEmpty()) {
      return module.vendor();
    }
    return module.dropped() || module.library() ? "not said" : "the suite";
  }

  static String from(Module module) {
    return module.dropped() ? "the modules folder" : module.library() ? "others" : "the suite";
  }

  static String day(Instant instant) {
    return DAY.format(instant);
  }

  static String fault(Module.Fault fault) {
    return MINUTE.format(fault.at()) + ", " + fault.doing() + ": " + fault.said();
  }
}
