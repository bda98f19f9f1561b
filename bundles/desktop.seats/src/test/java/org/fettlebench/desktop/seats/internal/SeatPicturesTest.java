package org.fettlebench.desktop.seats.internal;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.fettlebench.club.KitShelf;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.trial.Windowed;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Leaves pictures of the page, to be looked at. */
class SeatPicturesTest {
  /** The page's room in a window of 1280x800 and 1920x1080. */
  @ParameterizedTest
  @CsvSource({
    "empty, 1060, 690, false, 1, mm",
    "lug, 1060, 690, false, 1, mm",
    "lug-dark, 1060, 690, true, 1, in",
    "lug-large, 1060, 690, false, 1.5, mm",
    "lug-wide, 1700, 970, false, 1, in",
    "lug-wide-large, 1700, 970, true, 1.5, mm",
    "drilled, 1060, 690, false, 1, mm",
    "drilled-wide, 1700, 970, false, 1, in",
  })
  void takesPicture(String name, int width, int height, boolean dark, double scale, String unit) {
    Windowed.run(
        "failed-" + name,
        dark,
        scale,
        desk -> {
          SeatPage page = RealPage.page(mock(KitShelf.class));
          SeatView view = RealPage.open(desk, page, width, height);
          if (!name.equals("empty")) {
            view.deeds().example();
          }
          if (name.startsWith("drilled")) {
            view.bench()
                .apply(
                    Change.of(
                        "drilled",
                        sketch ->
                            sketch.with(
                                sketch
                                    .hole()
                                    .at(new Point(9.5, 0.2))
                                    .found(
                                        Optional.of(
                                            new SeatFile.Drilled(
                                                new Point(9.2, 0.2), 4.0, 0.05))))));
            view.side().pane().setOrigin(0, 10_000);
          }
          if (unit.equals("in")) {
            desk.unit(LengthUnit.INCH);
          }
          long end = System.nanoTime() + 600_000_000L;
          desk.until("cures are there", () -> System.nanoTime() > end);
          Path file = Windowed.folder().resolve("seats-" + name + ".png");
          desk.picture(file);
          assertTrue(Files.isRegularFile(file), file.toString());
          if (!name.equals("empty")) {
            view.deeds().card(Windowed.folder().resolve("seats-" + name + ".pdf"));
          }
          if (name.startsWith("drilled")) {
            view.view(ViewChoice.FACE);
            desk.settle();
            desk.picture(Windowed.folder().resolve("seats-" + name + "-face.png"));
          }
        });
  }
}
