package org.fettlebench.desktop.internal;

/** The longer texts of the Help menu. */
final class HelpTexts {
  static final String KEYBOARD =
      """
      Anywhere
      Ctrl+F or Ctrl+K   find anything; arrows choose, Enter goes, Esc closes
      Alt+1 to Alt+9   go to a page
      Ctrl+U   inch or mm
      Ctrl+Z   undo what was last done
      Ctrl+.   stop what is running
      Ctrl+P   print the page
      Ctrl++ and Ctrl+\u2212   larger and smaller text
      Tab and Shift+Tab   next and previous field; F6 the next part of the window
      F10 or Alt with a letter   the menus

      In a list
      typing   narrows it; Esc shows all again
      Enter   opens the row
      Ctrl+C   copies the rows with their heads; Ctrl+A chooses all

      On a drawing
      + and \u2212   closer and farther; 0 shows the whole
      arrow keys   move it
      Ctrl+C   copies it as a picture""";

  static final String ABOUT =
      """
      Fettlebench checks a casting kit joint by joint: does the fastener fit its hole and its seat, \
      how far may the hole be out, which of the club's drills and taps make it, what is short, and \
      what would sit better from stock.

      Every figure that comes from a table carries its source where it is shown. A figure that is \
      only workshop habit says so.

      Free software; the licence lies beside the documentation. Parts made by others are listed on \
      the page Modules.""";

  private HelpTexts() {}
}
