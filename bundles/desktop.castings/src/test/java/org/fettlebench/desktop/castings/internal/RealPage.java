package org.fettlebench.desktop.castings.internal;

import static org.mockito.Mockito.mock;

import java.util.Optional;
import org.fettlebench.castings.internal.CastingPainter;
import org.fettlebench.castings.internal.CastingPlacer;
import org.fettlebench.desktop.widgets.trial.TrialDesk;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fits.HoleMethods;
import org.fettlebench.fits.Seats;
import org.fettlebench.fits.Spanners;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.internal.KitFilesService;
import org.fettlebench.paper.CastingCards;
import org.fettlebench.paper.internal.CastingCardService;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;
import org.osgi.framework.BundleContext;

/** The page with the real services, without a framework. */
final class RealPage {
  /** Reads and writes casting files, which need none of what kits and seats do. */
  static final KitFiles FILES =
      new KitFilesService(
          mock(Threads.class),
          mock(Heads.class),
          mock(Drills.class),
          mock(HoleChooser.class),
          mock(HoleMethods.class),
          mock(Seats.class),
          mock(Spanners.class));

  private RealPage() {}

  static CastingBook book() {
    return new CastingBook(new CastingPlacer());
  }

  static CastingPage page() {
    CastingPainter painter = new CastingPainter();
    CastingPage page =
        new CastingPage(new CastingPlacer(), painter, FILES, mock(BundleContext.class));
    page.setCards(new CastingCardService(painter));
    return page;
  }

  static Optional<CastingCards> cards() {
    return Optional.of(new CastingCardService(new CastingPainter()));
  }

  /** Opens the page in a window, the keyboard where the work begins. */
  static CastingSheet open(TrialDesk desk, CastingPage page, int width, int height) {
    CastingSheet sheet = (CastingSheet) page.create(desk.shell(), desk);
    desk.open(width, height);
    page.focus();
    desk.settle();
    return sheet;
  }
}
