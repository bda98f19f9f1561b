package org.fettlebench.desktop.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.graphics.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WishesTest {
  @Test
  void propertiesOfTheFrameworkAreRead() {
    Map<String, String> properties =
        Map.of(
            "fettlebench.data", "/club",
            "fettlebench.open", "demo",
            "fettlebench.picture", "/tmp/a.png",
            "fettlebench.picture.page", "stock",
            "fettlebench.picture.size", "1920x1080",
            "fettlebench.picture.theme", "dark");
    Wishes wishes = Wishes.from(properties::get);
    assertTrue(wishes.demo());
    assertEquals(Optional.of(Path.of("/tmp/a.png")), wishes.picture());
    assertEquals("stock", wishes.picturePage());
    assertEquals(new Point(1920, 1080), wishes.pictureSize());
    assertEquals(Map.of("theme", "dark"), wishes.pictureLook());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1280", "axb", "0x800", "99999x10", "1280 x 800"})
  void aSizeThatIsNoneIsRefusedWithItsValue(String size) {
    Map<String, String> properties =
        Map.of("fettlebench.data", "/club", "fettlebench.picture.size", size);
    var refused = assertThrows(IllegalArgumentException.class, () -> Wishes.from(properties::get));
    assertTrue(refused.getMessage().contains(size), refused.getMessage());
  }

  @Test
  void withoutADataDirectoryNothingIsOpened() {
    assertThrows(IllegalArgumentException.class, () -> Wishes.from(key -> null));
  }
}
