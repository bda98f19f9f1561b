package org.fettlebench.desktop.stock.internal;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Layouts;

/** What stands on the page while the club has no stock: what to do first. */
final class FirstSteps {
  private final Composite page;

  /**
   * Ways to begin.
   *
   * @param receive enters one thing
   * @param list reads a list
   * @param demo puts the demo club's stock in
   * @param hasDemo whether there is a demo club
   */
  record Ways(Runnable receive, Runnable list, Runnable demo, boolean hasDemo) {}

  FirstSteps(Composite parent, Look look, Ways ways) {
    page = Layouts.page(parent, look);
    Layouts.answer(page, look, "Nothing is in stock yet");
    Layouts.text(
        page,
        look,
        "Begin with one drawer: say what lies in it, how many, and where it is. The kit check then"
            + " knows what need not be bought.");
    Layouts.button(page, look, "&Receive the first thing", ways.receive());
    Layouts.text(
        page,
        look,
        "Is there a list already? Save it as CSV, with the columns kind, name, thread, style,"
            + " diameter, length, material, place, condition, quantity, low-mark.");
    Layouts.button(page, look, "Receive a &list \u2026", ways.list());
    if (ways.hasDemo()) {
      Layouts.text(
          page,
          look,
          "Or look round first: an invented club, with its stock and a kit to check. Its stock"
              + " comes into this club's book.");
      Layouts.button(page, look, "Load the &demo club", ways.demo());
    }
  }

  Control control() {
    return page;
  }
}
