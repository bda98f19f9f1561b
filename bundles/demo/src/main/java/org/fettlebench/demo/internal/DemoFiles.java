package org.fettlebench.demo.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The files of the demo, which lie in its bundle. */
enum DemoFiles {
  /** The kit. */
  KIT("bench-pump.kit.toml"),
  /** The stock. */
  STOCK("stock.csv");

  private final String file;

  DemoFiles(String file) {
    this.file = file;
  }

  /** Returns the name for messages. */
  String file() {
    return file;
  }

  /** Returns the whole text. */
  String text() {
    String path = "/FETTLEBENCH/demo/" + file;
    try (InputStream bytes = DemoFiles.class.getResourceAsStream(path)) {
      if (bytes == null) {
        throw new IllegalStateException("the demo's bundle lacks " + path);
      }
      return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException("the demo's " + file + " cannot be read", unreadable);
    }
  }
}
