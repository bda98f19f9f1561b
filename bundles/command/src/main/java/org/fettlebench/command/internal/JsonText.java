package org.fettlebench.command.internal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** Writes data as JSON, keys in their order, numbers finite and written plainly. */
final class JsonText {
  private static final JSON WRITER =
      JSON.builder(
              JsonFactory.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build())
          .enable(JSON.Feature.PRETTY_PRINT_OUTPUT)
          .build();

  private JsonText() {}

  /**
   * Returns the JSON text.
   *
   * @throws IllegalArgumentException if the data holds what JSON does not know, or a number that is
   *     not finite; the message says where
   */
  static String of(Object data) {
    check("", data);
    try {
      return WRITER.asString(data).replace("\r\n", "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void check(String where, Object data) {
    if (data instanceof Map<?, ?> map) {
      map.forEach((key, value) -> check(where + "/" + key, value));
    } else if (data instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        check(where + "/" + i, list.get(i));
      }
    } else if (data instanceof Number number) {
      if (!Double.isFinite(number.doubleValue())) {
        throw new IllegalArgumentException(Messages.notFinite(where, number));
      }
    } else if (!(data instanceof String || data instanceof Boolean)) {
      throw new IllegalArgumentException(Messages.notJson(where, data));
    }
  }
}
