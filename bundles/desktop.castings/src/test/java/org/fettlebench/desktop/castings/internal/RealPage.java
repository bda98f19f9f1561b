package org.fettlebench.desktop.castings.internal;

import static org.mockito.Mockito.mock;

import java.util.Optional;
import org.fettlebench.desktop.widgets.trial.TrialDesk;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.paper.CastingCards;
import org.fettlebench.paper.internal.CastingCardService;
import org.fettlebench.testkit.trade.RealTrade;
import org.osgi.framework.BundleContext;

/** The page with the real services, without a framework. */
final class RealPage {
  static final KitFiles FILES = RealTrade.KIT_FILES;

  private RealPage() {}

  static CastingBook book() {
    return new CastingBook(RealTrade.CASTINGS);
  }

  static CastingPage page() {
    CastingPage page =
        new CastingPage(
            RealTrade.CASTINGS, RealTrade.CASTING_DRAWINGS, FILES, mock(BundleContext.class));
    page.setCards(cards().orElseThrow());
    return page;
  }

  static Optional<CastingCards> cards() {
    return Optional.of(new CastingCardService(RealTrade.CASTING_DRAWINGS));
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
