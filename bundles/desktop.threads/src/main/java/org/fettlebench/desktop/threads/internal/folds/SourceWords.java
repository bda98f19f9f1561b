package org.fettlebench.desktop.threads.internal.folds;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fettlebench.tables.Source;

/** Says where figures come from. */
final class SourceWords {
  private SourceWords() {}

  static String of(Source source) {
    return source.citation() + " (" + source.standing().words() + ")";
  }

  static String of(Stream<Source> sources) {
    return sources.distinct().map(SourceWords::of).collect(Collectors.joining("; "));
  }
}
