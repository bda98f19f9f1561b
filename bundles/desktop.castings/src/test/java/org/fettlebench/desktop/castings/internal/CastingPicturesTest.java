package org.fettlebench.desktop.castings.internal;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fettlebench.castings.CastingView;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.trial.Windowed;
import org.fettlebench.measure.LengthUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Leaves pictures of the page and of its papers, to be looked at. */
class CastingPicturesTest {
  /** The page's room in a window of 1280x800 and 1920x1080. */
  @ParameterizedTest
  @CsvSource({
    "empty, 1060, 690, false, 1, mm",
    "bracket, 1060, 690, false, 1, mm",
    "bracket-dark, 1060, 690, true, 1, in",
    "bracket-large, 1060, 690, false, 1.5, mm",
    "bracket-wide, 1700, 970, false, 1, in",
    "cylinder-wide, 1700, 970, true, 1, mm",
    "cylinder, 1060, 690, false, 1, mm",
    "short, 1060, 690, false, 1, mm",
    "horn, 1060, 690, false, 1, in",
    "valve, 1060, 690, false, 1, mm",
  })
  void takesPicture(String name, int width, int height, boolean dark, double scale, String unit) {
    Windowed.run(
        "failed-" + name,
        dark,
        scale,
        desk -> {
          CastingSheet sheet = RealPage.open(desk, RealPage.page(), width, height);
          if (!name.equals("empty")) {
            Sketch sketch = sketch(name.replaceAll("-.*", ""));
            sheet.bench().apply(Change.of("opened", before -> sketch));
          }
          if (unit.equals("in")) {
            desk.unit(LengthUnit.INCH);
          }
          desk.settle();
          Path file = Windowed.folder().resolve("castings-" + name + ".png");
          desk.picture(file);
          assertTrue(Files.isRegularFile(file), file.toString());
          if (!name.equals("empty")) {
            Deeds deeds = new Deeds(desk, sheet.bench(), RealPage.FILES, RealPage::cards);
            deeds.card(Windowed.folder().resolve("castings-" + name + ".pdf"));
            deeds.picture(Windowed.folder().resolve("castings-" + name + "-views.pdf"));
          }
          assertTrue(
              sheet.bench().reply().placing().stream()
                  .flatMap(each -> CastingView.of(each.casting()).stream())
                  .allMatch(each -> sheet.viewButtonOf(each) != null));
        });
  }

  static Sketch sketch(String name) {
    String file = name.equals("bracket") ? Example.NAME : name + ".casting.toml";
    try (InputStream bytes = Example.class.getResourceAsStream(file)) {
      String text = new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
      return CastingText.sketch(RealPage.FILES.readCasting(file, text));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
