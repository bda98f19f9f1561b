package org.fettlebench.sample.club;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The page on extending, as a reader sees it: what it says to type. */
final class Guide {
  private static final Path PAGE = Path.of("../../docs/extending.md");

  private final String text;

  Guide() {
    try {
      text = Files.readString(PAGE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns the text of all blocks in a language, in order. */
  List<String> blocks(String language) {
    return Pattern.compile("(?s)```" + language + "\\n(.*?)```")
        .matcher(text)
        .results()
        .map((MatchResult found) -> found.group(1))
        .toList();
  }

  /** Returns what the page says to type into a file. */
  String typedInto(String file) {
    return Pattern.compile("(?s)cat > " + Pattern.quote(file) + " <<'END'\\n(.*?)END\\n")
        .matcher(text)
        .results()
        .map(found -> found.group(1))
        .findFirst()
        .orElseThrow(() -> new AssertionError("the page makes no file " + file));
  }
}
