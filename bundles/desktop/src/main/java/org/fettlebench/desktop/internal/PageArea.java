package org.fettlebench.desktop.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Page;

/**
 * The pages in their order, one of them in front. Keeps step with the pages that are registered.
 */
final class PageArea {
  private final Composite area;
  private final StackLayout stack = new StackLayout();
  private final List<PageSlot> slots = new ArrayList<>();
  private final List<Page> refused = new ArrayList<>();
  private final Troubles troubles;
  private final Function<PageSlot, Desk> desks;
  private Runnable changed = () -> {};
  private Consumer<PageSlot> gone = slot -> {};
  private Optional<PageSlot> front = Optional.empty();
  private Control refuge;

  PageArea(Composite area, Troubles troubles, Function<PageSlot, Desk> desks) {
    this.area = area;
    this.refuge = area;
    this.troubles = troubles;
    this.desks = desks;
    area.setLayout(stack);
  }

  /** Is told when a page came, went, or came to the front. */
  void onChange(Runnable listener) {
    changed = listener;
  }

  /** Is told of each page that went. */
  void onGone(Consumer<PageSlot> listener) {
    gone = listener;
  }

  /** Sets what takes the keyboard from a page that goes. */
  void refuge(Control control) {
    refuge = control;
  }

  List<PageSlot> slots() {
    return List.copyOf(slots);
  }

  Optional<PageSlot> front() {
    return front;
  }

  Optional<PageSlot> slot(String id) {
    return slots.stream().filter(slot -> slot.identity().id().equals(id)).findFirst();
  }

  /** Takes in the pages that are new and lets those go that are not registered any more. */
  void update(List<Page> pages) {
    for (PageSlot slot : slots()) {
      if (!pages.contains(slot.page())) {
        remove(slot);
      }
    }
    refused.retainAll(pages);
    pages.stream().filter(this::isNew).forEach(this::add);
    changed.run();
  }

  private boolean isNew(Page page) {
    return !refused.contains(page) && slots.stream().noneMatch(slot -> slot.page() == page);
  }

  private void add(Page page) {
    AtomicReference<PageSlot.Identity> identity = new AtomicReference<>();
    Optional<Throwable> thrown =
        troubles.guard(page, "saying its name", () -> identity.set(identity(page)));
    if (thrown.isPresent()) {
      refused.add(page);
      return;
    }
    PageSlot slot = new PageSlot(page, identity.get(), troubles, area);
    slot.desk(desks.apply(slot));
    slots.add(slot);
    slots.sort(
        Comparator.comparingInt((PageSlot s) -> s.identity().order())
            .thenComparing(s -> s.identity().title()));
  }

  private PageSlot.Identity identity(Page page) {
    PageSlot.Identity identity = new PageSlot.Identity(page.id(), page.title(), page.order());
    if (identity.id() == null || identity.title() == null) {
      throw new IllegalStateException("a page needs an id and a title");
    }
    if (slot(identity.id()).isPresent()) {
      throw new IllegalStateException("another page has the id " + identity.id() + " already");
    }
    return identity;
  }

  private void remove(PageSlot slot) {
    int place = slots.indexOf(slot);
    slots.remove(slot);
    slot.close(refuge);
    gone.accept(slot);
    if (front.filter(shown -> shown == slot).isPresent()) {
      front = Optional.empty();
      if (!slots.isEmpty()) {
        bring(slots.get(Math.min(place, slots.size() - 1)));
      }
    }
  }

  /** Brings a page to the front. */
  void bring(PageSlot slot) {
    front = Optional.of(slot);
    stack.topControl = slot.control();
    area.layout();
    slot.bring();
    area.layout(true, true);
    changed.run();
  }

  /** Closes all pages. */
  void close() {
    slots().forEach(slot -> slot.close(refuge));
    slots.clear();
    front = Optional.empty();
  }

  /** Returns the composite that holds the pages. */
  Composite control() {
    return area;
  }
}
