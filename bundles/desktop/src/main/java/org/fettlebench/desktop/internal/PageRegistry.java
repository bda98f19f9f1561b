package org.fettlebench.desktop.internal;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.fettlebench.desktop.Page;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/** The pages that bundles contribute now; tells the window when one comes or goes. */
@Component(service = PageRegistry.class)
public final class PageRegistry {
  private final List<Page> pages = new CopyOnWriteArrayList<>();
  private volatile Runnable changed = () -> {};

  /** Takes a page, on any thread. */
  @Reference(
      cardinality = ReferenceCardinality.MULTIPLE,
      policy = ReferencePolicy.DYNAMIC,
      unbind = "remove")
  public void add(Page page) {
    pages.add(page);
    changed.run();
  }

  /** Lets a page go, on any thread. */
  public void remove(Page page) {
    pages.removeIf(known -> known == page);
    changed.run();
  }

  /** Returns the pages in the order in which they came. */
  public List<Page> pages() {
    return List.copyOf(pages);
  }

  /** Sets who is told, on any thread, that a page came or went. */
  void onChange(Runnable listener) {
    changed = listener;
  }
}
