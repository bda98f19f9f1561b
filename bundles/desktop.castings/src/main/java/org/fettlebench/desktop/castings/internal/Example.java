package org.fettlebench.desktop.castings.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The invented bracket that the page shows to whoever looks round. */
final class Example {
  static final String NAME = "example-bracket.casting.toml";

  private Example() {}

  static String text() {
    try (InputStream bytes = Example.class.getResourceAsStream(NAME)) {
      return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
