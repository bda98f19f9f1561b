package org.fettlebench.desktop.modules.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Page;
import org.fettlebench.desktop.widgets.Column;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.FilterField;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ListModel;
import org.fettlebench.desktop.widgets.LongList;
import org.fettlebench.desktop.widgets.Split;
import org.fettlebench.desktop.widgets.VerdictMark;
import org.fettlebench.modules.Module;
import org.fettlebench.modules.Modules;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** What the club has added to the suite, and whether it works; behind switches all the rest. */
@Component
public final class ModulesPage implements Page {
  private static final String ID = "modules";
  private static final String PARTS = "parts";
  private static final String LIBRARIES = "libraries";
  private static final int MOST_FOUND = 5;

  /** The club's own first, then what is ill, then what adds something that a person can see. */
  private static final Comparator<Module> WHAT_MATTERS_FIRST =
      Comparator.comparingInt(ModulesPage::rank)
          .thenComparing(Module::title, Figures::compareNaturally);

  private final Modules modules;
  private Desk desk;
  private ModuleAdding adding;
  private Label summary;
  private Button parts;
  private Button libraries;
  private FilterField filter;
  private LongList<Module> list;
  private ModuleCard card;
  private List<Module> known = List.of();
  private String wanted = "";

  /** Made by Declarative Services. */
  @Activate
  public ModulesPage(@Reference Modules modules) {
    this.modules = modules;
  }

  @Override
  public String id() {
    return ID;
  }

  @Override
  public String title() {
    return "Modules";
  }

  @Override
  public int order() {
    return 90;
  }

  @Override
  public Control create(Composite parent, Desk newDesk) {
    desk = newDesk;
    adding = new ModuleAdding(desk, modules);
    Composite page = Layouts.page(parent, desk.look());
    summary = Layouts.answer(page, desk.look(), "");
    Layouts.text(
        page,
        desk.look(),
        "A module is a jar in the modules folder. It appears here as soon as it lies there and goes"
            + " when it is taken away. It runs with all the rights of the suite, so let in only"
            + " what comes from a maker you trust.");
    actions(page);
    Split split = new Split(page, desk, SWT.HORIZONTAL, ID, "sash");
    left(split.form());
    card = new ModuleCard(split.form(), desk.look(), this::leaveOutOrLetIn);
    split.share(60, 40);
    return page;
  }

  private void actions(Composite page) {
    Composite line = Layouts.columns(page, 4);
    Layouts.button(line, desk.look(), "&Add a module \u2026", adding::ask);
    Layouts.button(line, desk.look(), "&Open modules folder", adding::openFolder);
    parts = toggle(line, "Show the suite's own &parts", PARTS);
    libraries = toggle(line, "Show &libraries made by others", LIBRARIES);
  }

  /** Makes a switch that widens the list and is remembered. */
  private Button toggle(Composite line, String text, String key) {
    Button button = new Button(line, SWT.CHECK);
    button.setText(text);
    button.setFont(desk.look().text());
    button.setForeground(desk.look().ink());
    button.setBackground(line.getBackground());
    button.setSelection(desk.remembered(ID, key, "no").equals("yes"));
    button.addListener(SWT.Selection, event -> widen(button, key));
    return button;
  }

  private void widen(Button button, String key) {
    desk.remember(ID, key, button.getSelection() ? "yes" : "no");
    fill();
  }

  private void left(Composite form) {
    Composite left = Layouts.columns(form, 1);
    filter = Layouts.wide(new FilterField(left, desk, "name, maker, what it adds"));
    list =
        Layouts.fill(new LongList<>(left, desk, ID, "modules", columns()))
            .keyedBy(Module::symbolicName)
            .whenEmpty(
                "The club has added nothing yet. \u201cAdd a module \u2026\u201d lets one in.")
            .onSelect(chosen -> card.show(chosen.stream().findFirst()));
    filter.narrows(list);
  }

  private static List<Column<Module>> columns() {
    return List.of(
        Column.<Module>words("Module", 38, Module::title),
        Column.<Module>words("State", 15, ModuleWords::word)
            .marked(module -> Optional.of(ModuleWords.mark(module))),
        Column.<Module>words("Adds", 26, ModuleWords::adds),
        Column.<Module>words("By", 12, ModuleWords::by),
        Column.<Module>words("Since", 20, module -> ModuleWords.day(module.since()))
            .orderedBy(Comparator.comparing(Module::since)),
        Column.<Module>words("Version", 12, Module::version));
  }

  @Override
  public void refresh() {
    desk.work("Looking at the modules", modules::installed, this::take);
  }

  private void take(List<Module> installed) {
    if (list.isDisposed()) {
      return;
    }
    known = installed.stream().sorted(WHAT_MATTERS_FIRST).toList();
    if (desk.remembered(ID, PARTS, "").isEmpty()) {
      // A page with nothing on it helps nobody: until a club adds something, show what is there.
      parts.setSelection(installed.stream().noneMatch(Module::dropped));
    }
    summary.setText(Layouts.escaped(ModuleWords.summary(installed)));
    fill();
    if (!wanted.isEmpty() && select(wanted)) {
      wanted = "";
    } else if (list.selection().isEmpty() && list.model().size() > 0) {
      list.selectRow(0);
    }
  }

  private void fill() {
    list.items(known.stream().filter(this::wantedInList).toList());
    card.show(list.selection().stream().findFirst());
  }

  /** What the club added stands there always, and so does what is wrong, wherever it is from. */
  private boolean wantedInList(Module module) {
    if (module.dropped() || ModuleWords.mark(module) != VerdictMark.TICK) {
      return true;
    }
    return module.library() ? libraries.getSelection() : parts.getSelection();
  }

  private static int rank(Module module) {
    if (module.dropped()) {
      return 0;
    }
    if (ModuleWords.mark(module) != VerdictMark.TICK) {
      return 1;
    }
    return module.contributions().isEmpty() ? 3 : 2;
  }

  private boolean select(String symbolicName) {
    return list.select(symbolicName);
  }

  private void leaveOutOrLetIn(Module module) {
    boolean letIn = ModuleWords.leftOut(module);
    change(module, letIn);
    String sentence = module.title() + (letIn ? " is let in again." : " is left out.");
    desk.say(sentence, () -> change(module, !letIn));
  }

  private void change(Module module, boolean enabled) {
    desk.work(
        (enabled ? "Letting in " : "Leaving out ") + module.title(),
        () -> {
          modules.enable(module.symbolicName(), enabled);
          return modules.installed();
        },
        this::take);
  }

  @Override
  public void focus() {
    list.setFocus();
  }

  @Override
  public List<Found> find(String typed) {
    return ListModel.of(known, module -> module.title() + "\n" + module.description())
        .filtered(typed)
        .shown()
        .stream()
        .filter(module -> !module.library())
        .limit(MOST_FOUND)
        .map(module -> new Found(ID, module.symbolicName(), module.title(), module.description()))
        .toList();
  }

  @Override
  public void show(Found found) {
    filter.type("");
    if (known.stream().anyMatch(m -> m.symbolicName().equals(found.key()) && !wantedInList(m))) {
      parts.setSelection(true);
      widen(parts, PARTS);
    }
    if (!select(found.key())) {
      wanted = found.key();
    }
  }

  @Override
  public void print() {
    list.print("Modules");
  }
}
