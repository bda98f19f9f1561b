package org.fettlebench.command.internal;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.fettlebench.kits.FaultyFileException;

/** Text out of bytes; what is no text is refused with its place. */
final class Utf8 {
  private Utf8() {}

  static String read(String file, byte[] bytes) {
    ByteBuffer left = ByteBuffer.wrap(bytes);
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(left).toString();
    } catch (CharacterCodingException notUtf8) {
      String before = new String(bytes, 0, left.position(), StandardCharsets.UTF_8);
      int line = 1 + (int) before.chars().filter(sign -> sign == '\n').count();
      FaultyFileException refused =
          new FaultyFileException(
              List.of(
                  new FaultyFileException.Fault(
                      file,
                      line,
                      before.length() - before.lastIndexOf('\n'),
                      String.format("byte %02X", bytes[left.position()]),
                      "is not UTF-8 text",
                      "Save it as UTF-8")));
      refused.initCause(notUtf8);
      throw refused;
    }
  }
}
