package org.fettlebench.desktop.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The window draws its own picture and closes; the pictures are left in target/pictures. */
class WindowPictureTest {
  @TempDir Path data;

  @ParameterizedTest
  @CsvSource({
    "light, 100, 1280, 800",
    "dark, 100, 1280, 800",
    "light, 150, 1920, 1080",
    "dark, 150, 1280, 800"
  })
  void theWindowPicturesItselfAndCloses(String theme, int size, int width, int height)
      throws Exception {
    boolean screen = !SWT.getPlatform().equals("gtk") || System.getenv("DISPLAY") != null;
    Assumptions.assumeTrue(screen, "no DISPLAY is set, so there is no window to picture");
    Path picture =
        Files.createDirectories(Path.of("target", "pictures"))
            .resolve("window-" + theme + "-" + size + "-" + width + ".png");
    Files.deleteIfExists(picture);
    Memory memory = new Memory(data.resolve("desktop.properties"));
    memory.put("theme", theme);
    memory.put("textsize", String.valueOf(size));
    memory.put("club", "An invented club");
    Map<String, String> properties =
        Map.of(
            "fettlebench.data",
            data.toString(),
            "fettlebench.picture",
            picture.toString(),
            "fettlebench.picture.page",
            "two",
            "fettlebench.picture.size",
            width + "x" + height);
    PageRegistry registry = new PageRegistry();
    registry.add(new TrialPage("one", 10));
    TrialPage two = new TrialPage("two", 20);
    registry.add(two);
    MainWindow window =
        new MainWindow(
            Display.getDefault(), Wishes.from(properties::get), memory, (page, doing, cause) -> {});
    window.later(
        () -> {
          two.desk.say("Took 6 of 2 BA x 5/8 in hexagon from drawer 3.", () -> {});
          two.desk.complain("pump.kit.toml, line 31: the thread \"2 BB\" is not known. 2 BA?");
        });
    window.run(registry);
    ImageData drawn = new ImageData(picture.toString());
    assertEquals(width, drawn.width);
    assertEquals(height, drawn.height);
    assertTrue(two.calls.contains("create"));
  }
}
