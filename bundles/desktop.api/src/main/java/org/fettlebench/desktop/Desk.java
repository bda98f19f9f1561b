package org.fettlebench.desktop;

import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Shell;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.osgi.annotation.versioning.ProviderType;

/** What the window offers to its pages. All methods are called on the window's thread. */
@ProviderType
public interface Desk {
  /** Returns the unit in which lengths are shown first. */
  LengthUnit unit();

  /** Returns a length as it is to be shown now. */
  String show(Length length);

  /** Tells a page when the unit, the text size or the theme changed, until the page closes. */
  void onLookChange(Runnable changed);

  /** Says in the status line what just happened. */
  void say(String sentence);

  /** Says what just happened, with an Undo beside it (also by the keyboard). */
  void say(String sentence, Runnable undo);

  /** Shows what went wrong and what to do about it, without stopping the person's work. */
  void complain(String sentence);

  /**
   * Does long work off the window's thread, with its name and a Stop in the status line.
   *
   * @param what name of the work for people
   * @param work done on another thread, where no control may be touched; interrupted by Stop
   * @param done called on the window's thread with the result; a failure is shown by the window
   */
  <T> void work(String what, Callable<T> work, Consumer<T> done);

  /** Goes to a page and shows a thing there. */
  void go(Page.Found found);

  /** Returns a text the page remembered, or {@code otherwise}. */
  String remembered(String pageId, String key, String otherwise);

  /** Remembers a text for the page until the next start and longer. */
  void remember(String pageId, String key, String value);

  /** Returns the colours and fonts of the window. */
  Look look();

  /** Returns the window, as parent of dialogues. */
  Shell shell();
}
