package org.fettlebench.desktop.modules.internal;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.fettlebench.modules.Module;

/** Invented modules. */
final class Trial {
  static final Instant DAY = Instant.parse("2026-03-14T19:30:00Z");

  private Trial() {}

  static Module module(String title, boolean working, String state, List<Module.Fault> faults) {
    return new Module(
        "club." + title.toLowerCase(Locale.ROOT).replace(' ', '.'),
        title,
        "Adds what the club wants.",
        "1.2.0",
        "An invented club",
        true,
        "/club/modules/club.jar",
        working,
        state,
        DAY,
        List.of("thread series: Club 36 tpi", "page: Club evening"),
        faults);
  }

  static Module adding(String... contributions) {
    return new Module(
        "club.adding",
        "Adding",
        "",
        "1.0.0",
        "",
        true,
        "",
        true,
        "working",
        DAY,
        List.of(contributions),
        List.of());
  }

  static Module suite(String symbolicName, String title, String... contributions) {
    return new Module(
        symbolicName,
        title,
        "A part.",
        "0.1.0",
        "",
        false,
        "/suite/part.jar",
        true,
        "working",
        DAY,
        List.of(contributions),
        List.of());
  }

  static Module ill(String symbolicName, String title, String state) {
    return new Module(
        symbolicName,
        title,
        "A part.",
        "0.1.0",
        "",
        false,
        "/suite/part.jar",
        false,
        state,
        DAY,
        List.of(),
        List.of());
  }

  static Module.Fault fault(String doing, String said) {
    return new Module.Fault(DAY, doing, said);
  }
}
