package org.fettlebench.desktop.internal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collections;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * What the window remembers until the next start: a small file of texts, always written whole. A
 * file that cannot be read is put aside; nothing in it is worth keeping a person from working.
 */
final class Memory {
  private static final Logger LOG = LoggerFactory.getLogger(Memory.class);

  private final Path file;
  private final Map<String, String> texts = Collections.synchronizedMap(new TreeMap<>());
  private volatile boolean changed;
  private volatile boolean passing;

  Memory(Path file) {
    this.file = file;
    if (Files.exists(file)) {
      read();
    }
  }

  private void read() {
    Properties read = new Properties();
    try (BufferedReader reader = Files.newBufferedReader(file)) {
      read.load(reader);
      read.stringPropertyNames().forEach(key -> texts.put(key, read.getProperty(key)));
    } catch (IOException | IllegalArgumentException unreadable) {
      LOG.warn("{} cannot be read and is put aside", file, unreadable);
      putAside();
    }
  }

  private void putAside() {
    try {
      Path aside = file.resolveSibling(file.getFileName() + ".unreadable");
      Files.move(file, aside, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException stuck) {
      LOG.warn("{} cannot be put aside", file, stuck);
    }
  }

  String get(String key, String otherwise) {
    return texts.getOrDefault(key, otherwise);
  }

  int number(String key, int otherwise) {
    String text = get(key, "");
    return text.matches("-?\\d{1,6}") ? Integer.parseInt(text) : otherwise;
  }

  void put(String key, String value) {
    if (!value.equals(texts.put(key, value))) {
      changed = true;
    }
  }

  /** From now on changes are forgotten at the end: nothing is written any more. */
  void keepNothing() {
    passing = true;
  }

  /** Writes the file if anything changed; may be called on any thread. */
  synchronized void save() {
    if (changed && !passing) {
      changed = false;
      try {
        Files.createDirectories(file.toAbsolutePath().getParent());
        Path whole = file.resolveSibling(file.getFileName() + ".new");
        Files.writeString(whole, text());
        moveInPlace(whole);
      } catch (IOException unwritable) {
        LOG.warn("{} cannot be written; the window forgets its state", file, unwritable);
      }
    }
  }

  private void moveInPlace(Path whole) throws IOException {
    try {
      Files.move(whole, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException plain) {
      LOG.debug("no atomic move in {}", file.getParent(), plain);
      Files.move(whole, file, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private String text() throws IOException {
    Properties properties = new Properties();
    synchronized (texts) {
      properties.putAll(texts);
    }
    StringWriter writer = new StringWriter();
    properties.store(writer, "What the window remembers; may be deleted while it is closed.");
    return writer.toString();
  }
}
