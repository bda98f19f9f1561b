package org.fettlebench.desktop;

import java.util.List;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * A page of the window. Registered as a service by any bundle; it appears in the list of pages at
 * once and goes when the bundle goes. All methods are called on the window's thread.
 */
@ConsumerType
public interface Page {
  /**
   * Returns a name that never changes, under which its state is remembered. No two pages may have
   * the same, so a module's page begins it with the module's name: {@code org.example.club.key}.
   */
  String id();

  /** Returns what stands in the list of pages. */
  String title();

  /**
   * Returns where it asks to stand, the lowest first: 10 kit check, ... 90 modules. A module's page
   * stands well between them, at 60 to 80.
   */
  int order();

  /**
   * Makes the page's content; called once, when it is first shown.
   *
   * @param parent to hold nothing else; its layout is the window's affair
   * @param desk to be kept: the other methods of a page are called without it
   * @return the one control made in {@code parent}
   */
  Control create(Composite parent, Desk desk);

  /** Called each time the page comes to the front, and when tables or modules changed. */
  default void refresh() {}

  /** Puts the keyboard where the page's work begins. */
  default void focus() {}

  /**
   * Returns things of this page that fit what was typed into the find box, best first. Asked at
   * each pause in typing, also before the page was ever shown, so it must be quick and must not
   * need the page's content. Once it has thrown, the page is not asked any more.
   */
  default List<Found> find(String typed) {
    return List.of();
  }

  /** Shows a thing that {@link #find} returned. */
  default void show(Found found) {}

  /**
   * Undoes the last thing done on a page that keeps its own count of them. Asked while the page is
   * in front, before the window undoes what was said with an Undo.
   *
   * @return whether the page takes care of it
   */
  default boolean undo() {
    return false;
  }

  /** Prints what the page shows, as its person would expect. */
  default void print() {}

  /** Called before its content is disposed of. */
  default void close() {}

  /**
   * A thing the find box can take a person to.
   *
   * @param pageId page that shows it
   * @param key what the page needs to show it
   * @param title for people
   * @param detail smaller text beside it
   */
  record Found(String pageId, String key, String title, String detail) {}
}
