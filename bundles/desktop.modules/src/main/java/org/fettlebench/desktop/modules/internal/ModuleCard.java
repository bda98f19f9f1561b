package org.fettlebench.desktop.modules.internal;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;
import org.fettlebench.desktop.widgets.Section;
import org.fettlebench.desktop.widgets.VerdictBadge;
import org.fettlebench.desktop.widgets.VerdictMark;
import org.fettlebench.modules.Module;

/** All that is known of one module. */
final class ModuleCard {
  private static final int FAULTS_SHOWN = 20;

  private final ScrollPane pane;
  private final Look look;
  private final Consumer<Module> switched;
  private Optional<Module> shown = Optional.empty();

  /**
   * Makes an empty card.
   *
   * @param switched takes a module that is to be left out or let in again
   */
  ModuleCard(Composite parent, Look look, Consumer<Module> switched) {
    this.look = look;
    this.switched = switched;
    pane = new ScrollPane(parent, look);
    ((org.eclipse.swt.layout.GridLayout) pane.body().getLayout()).marginLeft = Layouts.MARGIN;
    show(Optional.empty());
  }

  /** Shows a module, or what to do first. */
  void show(Optional<Module> module) {
    if (module.isPresent() && module.equals(shown)) {
      return;
    }
    shown = module;
    for (Control child : pane.body().getChildren()) {
      child.dispose();
    }
    module.ifPresentOrElse(
        this::fill, () -> Layouts.text(pane.body(), look, "Choose a module to see what it adds."));
    pane.fit();
  }

  private void fill(Module module) {
    Composite body = pane.body();
    Layouts.answer(body, look, module.title());
    VerdictBadge badge = new VerdictBadge(body, look);
    badge.show(ModuleWords.mark(module), ModuleWords.word(module));
    if (!module.working() && !ModuleWords.leftOut(module)) {
      Layouts.text(body, look, module.state());
    }
    if (!module.description().isEmpty()) {
      Layouts.text(body, look, module.description());
    }
    if (module.dropped()) {
      String text = ModuleWords.leftOut(module) ? "&Let it in again" : "&Leave it out";
      Layouts.button(body, look, text, () -> switched.accept(module));
    }
    faults(module);
    adds(module);
    whence(module);
  }

  private void faults(Module module) {
    if (module.faults().isEmpty()) {
      return;
    }
    Section section = new Section(pane.body(), look, "What it said");
    module.faults().stream()
        .limit(FAULTS_SHOWN)
        .forEach(fault -> section.point(VerdictMark.STRUCK, ModuleWords.fault(fault)));
    int more = module.faults().size() - FAULTS_SHOWN;
    if (more > 0) {
      section.remark(more + " older ones are in the log.");
    }
  }

  private void adds(Module module) {
    Section section = new Section(pane.body(), look, "What it adds");
    if (module.contributions().isEmpty()) {
      section.text(
          module.working()
              ? "Nothing that stands in a list; other modules use it."
              : "Nothing while it does not run.");
    }
    module.contributions().forEach(section::text);
  }

  private void whence(Module module) {
    Section section = new Section(pane.body(), look, "Where it comes from");
    section.line("Made by", ModuleWords.by(module));
    section.line("Came with", ModuleWords.from(module));
    section.line("Version", module.version());
    section.line("Here since", ModuleWords.day(module.since()));
    section.line("Name", module.symbolicName());
    if (!module.location().isEmpty()) {
      section.line("File", module.location());
    }
  }

  /** Returns the control to lay out. */
  Control control() {
    return pane;
  }
}
