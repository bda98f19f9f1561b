package org.fettlebench.desktop.widgets;

import org.eclipse.swt.widgets.Event;
import org.fettlebench.measure.Point;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * What a page does with pointer and keys on a drawing, before the drawing is moved or zoomed by
 * them. Called on the window's thread.
 */
@ConsumerType
public interface DrawingTool {
  /** Returns whether the tool takes hold of something; the view then stays until it is let go. */
  boolean press(Pointer at);

  /** Follows the pointer with what was taken hold of. */
  void drag(Pointer at);

  /** Lets go. */
  void release(Pointer at);

  /** Follows the pointer while no button is pressed; returns whether something may be grabbed. */
  boolean hover(Pointer at);

  /** Returns whether a double click did something. */
  boolean doubleClick(Pointer at);

  /** Returns whether a key did something. */
  boolean key(Event event);

  /** Goes to the next thing that may be moved by keys; returns whether there is one left. */
  boolean next(boolean backwards);

  /**
   * Where the pointer is.
   *
   * @param x pixel column
   * @param y pixel row
   * @param view that is on the screen
   * @param free whether the key that frees from snapping is held
   */
  record Pointer(double x, double y, DrawingView view, boolean free) {
    /** Returns the place under the pointer. */
    public Point place() {
      return view.at(x, y);
    }
  }
}
