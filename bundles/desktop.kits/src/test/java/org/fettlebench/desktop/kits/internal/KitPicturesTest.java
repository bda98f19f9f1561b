package org.fettlebench.desktop.kits.internal;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.fettlebench.desktop.widgets.trial.Windowed;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Leaves pictures of the page with the demo kit, to be looked at. */
class KitPicturesTest {
  /** The page's room in a window of 1280x800 and 1920x1080. */
  @ParameterizedTest
  @CsvSource({
    "small, 1060, 690, false, 1, barrel flange",
    "small-dark, 1060, 690, true, 1, packing box",
    "small-large, 1060, 690, false, 1.5, bonnet nuts",
    "wide, 1700, 970, false, 1, barrel flange",
    "wide-large, 1700, 970, true, 1.5, valve chest cover",
    "unmeasured, 1060, 690, false, 1, drain cock",
    "wide-clear, 1700, 970, false, 1, 'bearing cap, near'",
  })
  void takesPicture(String name, int width, int height, boolean dark, double scale, String joint) {
    Windowed.run(
        "failed-" + name,
        dark,
        scale,
        desk -> {
          KitView view = Club.demo().open(desk, Club.demo().page(), width, height);
          view.showJoint(joint);
          desk.settle();
          Path file = Windowed.folder().resolve("kits-" + name + ".png");
          desk.picture(file);
          assertTrue(Files.isRegularFile(file), file.toString());
        });
  }
}
