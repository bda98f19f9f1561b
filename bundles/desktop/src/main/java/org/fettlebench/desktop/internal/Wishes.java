package org.fettlebench.desktop.internal;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.eclipse.swt.graphics.Point;

/**
 * How the launcher wishes the window to open.
 *
 * @param data directory for what the window remembers
 * @param club name of the club until a person gives another; empty when not known
 * @param demo whether to open on the first page, as on the invented club
 * @param picture file for a picture of the window, which is then closed
 * @param picturePage page to be shown on the picture; empty for the one that opens
 * @param pictureSize outer size of the window on the picture
 * @param pictureLook theme, text size and unit on the picture, as the window remembers them
 * @param measured whether to log when the window was usable
 * @param measuredOnly whether to close the window then
 */
record Wishes(
    Path data,
    String club,
    boolean demo,
    Optional<Path> picture,
    String picturePage,
    Point pictureSize,
    Map<String, String> pictureLook,
    boolean measured,
    boolean measuredOnly) {

  /** Reads the wishes from the framework's properties. */
  static Wishes from(Function<String, String> properties) {
    Function<String, String> text =
        key -> Optional.ofNullable(properties.apply("fettlebench." + key)).orElse("");
    String data = text.apply("data");
    if (data.isEmpty()) {
      throw new IllegalArgumentException("fettlebench.data does not say where the data is kept");
    }
    String picture = text.apply("picture");
    return new Wishes(
        Path.of(data),
        text.apply("club"),
        text.apply("open").equals("demo"),
        picture.isEmpty() ? Optional.empty() : Optional.of(Path.of(picture)),
        text.apply("picture.page"),
        size(text.apply("picture.size")),
        look(text),
        !text.apply("bench").isEmpty(),
        text.apply("bench.exit").equals("true"));
  }

  private static Map<String, String> look(Function<String, String> text) {
    Map<String, String> look = new TreeMap<>();
    look.put("theme", text.apply("picture.theme"));
    look.put("textsize", text.apply("picture.text"));
    look.put("unit", text.apply("picture.unit"));
    look.values().removeIf(String::isEmpty);
    return look;
  }

  private static Point size(String text) {
    if (text.isEmpty()) {
      return new Point(1280, 800);
    }
    if (!text.matches("[1-9]\\d{2,3}x[1-9]\\d{2,3}")) {
      throw new IllegalArgumentException(
          "fettlebench.picture.size is \"" + text + "\"; write it as 1280x800");
    }
    String[] parts = text.split("x");
    return new Point(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));
  }
}
