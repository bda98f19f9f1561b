package org.fettlebench.kits.internal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fettlebench.kits.internal.FaultList.At;

/** Refuses files that are no texts at all, before anyone tries to understand them. */
final class TextCheck {
  /** A kit of a thousand joints is far below this; a picture opened by mistake often is above. */
  static final int LARGEST = 4_000_000;

  private static final At START = new At(1, 1);

  private TextCheck() {}

  static String read(Path path) {
    String file = String.valueOf(path.getFileName());
    FaultList faults = new FaultList(file);
    try {
      if (Files.isDirectory(path)) {
        faults.add(START, path, "is a folder", "Name a file in it");
      } else if (!Files.isRegularFile(path)) {
        faults.add(START, path, "is no file that is there", "Give the path of a text file");
      } else if (Files.size(path) > LARGEST) {
        tooLarge(faults, Files.size(path));
      } else {
        return decode(file, Files.readAllBytes(path));
      }
    } catch (IOException unreadable) {
      faults.add(START, path, "cannot be read: " + unreadable.getMessage(), "Check its rights");
    }
    faults.throwIfAny();
    throw new IllegalStateException("a file is either read or refused");
  }

  private static String decode(String file, byte[] bytes) {
    ByteBuffer left = ByteBuffer.wrap(bytes);
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(left).toString();
    } catch (CharacterCodingException notUtf8) {
      String before = new String(bytes, 0, left.position(), StandardCharsets.UTF_8);
      FaultList faults = new FaultList(file);
      faults.add(
          endOf(before),
          String.format("byte %02X", bytes[left.position()]),
          "is not UTF-8 text",
          "Save the file as UTF-8; if it is no text file, choose another");
      faults.throwIfAny();
      throw new IllegalStateException("a fault was added", notUtf8);
    }
  }

  /** Refuses text that is empty, too large or holds what no text holds. */
  static String check(String file, String text) {
    FaultList faults = new FaultList(file);
    String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
    int binary = plain.indexOf('\0');
    if (plain.isBlank()) {
      faults.add(START, "", "the file is empty", "Write it as the page on file formats shows");
    } else if (plain.length() > LARGEST) {
      tooLarge(faults, plain.length());
    } else if (binary >= 0) {
      faults.add(
          endOf(plain.substring(0, binary)),
          "byte 00",
          "is not text: the file looks like a binary one",
          "Choose the text file");
    } else if (plain.indexOf('\uFFFD') >= 0) {
      faults.add(
          endOf(plain.substring(0, plain.indexOf('\uFFFD'))),
          "\uFFFD",
          "stands where a sign could not be read",
          "Save the file as UTF-8");
    }
    faults.throwIfAny();
    return plain;
  }

  private static void tooLarge(FaultList faults, long size) {
    faults.add(
        START,
        "",
        "the file has " + size + " bytes, more than the " + LARGEST + " allowed",
        "Check that it is the right file, or divide it");
  }

  private static At endOf(String before) {
    int line = (int) before.chars().filter(sign -> sign == '\n').count() + 1;
    return new At(line, before.length() - before.lastIndexOf('\n'));
  }
}
