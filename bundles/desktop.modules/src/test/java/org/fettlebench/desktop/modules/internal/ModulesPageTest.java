package org.fettlebench.desktop.modules.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.inOrder;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Page;
import org.fettlebench.desktop.widgets.LongList;
import org.fettlebench.desktop.widgets.trial.TrialDesk;
import org.fettlebench.modules.Module;
import org.fettlebench.modules.Modules;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.mockito.InOrder;

class ModulesPageTest {
  private final Modules modules = mock(Modules.class);
  private final ModulesPage page = new ModulesPage(modules);

  private final Module club = Trial.module("Club evening", true, "working", List.of());
  private final Module faulty =
      Trial.module(
          "Club rules",
          true,
          "working",
          List.of(Trial.fault("checking joint Gland", "the rule divided by nought")));
  private final Module ill =
      Trial.module(
          "Old page", false, "cannot start: it needs org.fettlebench.desktop 2.0", List.of());
  private final Module suite =
      Trial.suite("org.fettlebench.threads", "Threads", "thread series: BA");
  private final Module illPart =
      Trial.ill("org.fettlebench.paper", "Paper: printed as PDF", "needs the package java.ink");
  private final Module library = Trial.suite("org.locationtech.jts", "JTS geometry");

  private List<Module> installed = List.of(club, faulty, ill, suite, illPart, library);

  private List<Module> shown(Control root) {
    return list(root).model().shown();
  }

  private void run(boolean dark, double scale, BiConsumer<TrialDesk, Control> test)
      throws Exception {
    boolean screen = !SWT.getPlatform().equals("gtk") || System.getenv("DISPLAY") != null;
    Assumptions.assumeTrue(screen, "no DISPLAY is set, so there is no window to test");
    when(modules.installed()).thenReturn(installed);
    Path pictures = Files.createDirectories(Path.of("target", "pictures"));
    try (TrialDesk desk = new TrialDesk(Display.getDefault(), dark, scale)) {
      Control made = page.create(desk.shell(), desk);
      desk.open(1100, 720);
      page.refresh();
      try {
        test.accept(desk, made);
      } catch (RuntimeException | Error failure) {
        desk.picture(pictures.resolve("failed.png"));
        throw failure;
      }
    }
  }

  @SuppressWarnings("unchecked")
  private static LongList<Module> list(Control root) {
    return (LongList<Module>) find(root, LongList.class, "").orElseThrow();
  }

  private static java.util.Optional<Control> find(Control root, Class<?> type, String text) {
    if (type.isInstance(root) && text(root).contains(text)) {
      return java.util.Optional.of(root);
    }
    if (root instanceof Composite composite) {
      for (Control child : composite.getChildren()) {
        var found = find(child, type, text);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return java.util.Optional.empty();
  }

  private static String text(Control control) {
    return control instanceof Label label
        ? label.getText()
        : control instanceof Button button ? button.getText() : "";
  }

  private static void press(Control root, String text) {
    Button button = (Button) find(root, Button.class, text).orElseThrow();
    if ((button.getStyle() & SWT.CHECK) != 0) {
      button.setSelection(!button.getSelection());
    }
    button.notifyListeners(SWT.Selection, new Event());
  }

  @ParameterizedTest
  @CsvSource({"false, 1.0", "true, 1.5"})
  void thePageIsPictured(boolean dark, double scale) throws Exception {
    run(
        dark,
        scale,
        (desk, root) -> {
          assertTrue(list(root).select(faulty.symbolicName()));
          desk.picture(
              Path.of("target", "pictures", "modules-" + (dark ? "dark" : "light") + ".png"));
        });
  }

  @Test
  void theWorstIsTheAnswerAndTheCardSaysWhy() throws Exception {
    run(
        false,
        1,
        (desk, root) -> {
          assertTrue(find(root, Label.class, "2 do not work").isPresent());
          list(root).select(ill.symbolicName());
          assertTrue(find(root, Label.class, "it needs org.fettlebench.desktop 2.0").isPresent());
          list(root).select(faulty.symbolicName());
          assertTrue(find(root, Label.class, "the rule divided by nought").isPresent());
        });
  }

  @Test
  void theClubsModulesAndWhatIsWrongStandAloneUntilMoreIsAsked() throws Exception {
    run(
        false,
        1,
        (desk, root) -> {
          assertEquals(List.of(club, faulty, ill, illPart), shown(root));
          press(root, "own &parts");
          assertEquals(List.of(club, faulty, ill, illPart, suite), shown(root));
          press(root, "own &parts");
          press(root, "&libraries");
          assertEquals(List.of(club, faulty, ill, illPart, library), shown(root));
        });
  }

  @Test
  void whileNothingIsAddedTheSuitesOwnPartsStandThere() throws Exception {
    installed = List.of(suite, library);
    run(
        false,
        1,
        (desk, root) -> {
          assertEquals(List.of(suite), shown(root));
          press(root, "own &parts");
          assertEquals(List.of(), shown(root));
          page.refresh();
          assertEquals(List.of(), shown(root), "what the person chose stays");
          assertTrue(find(root, Label.class, "Everything works, no module added").isPresent());
        });
  }

  @Test
  void aFoundPartOfTheSuiteIsUnfolded() throws Exception {
    run(
        false,
        1,
        (desk, root) -> {
          page.show(page.find("threads").get(0));
          assertEquals(List.of(suite), list(root).selection());
        });
  }

  @Test
  void aModuleIsLeftOutAndThatIsUndone() throws Exception {
    run(
        false,
        1,
        (desk, root) -> {
          list(root).select(club.symbolicName());
          press(root, "Leave it out");
          assertEquals(List.of("Club evening is left out."), desk.said());
          desk.undo();
          InOrder order = inOrder(modules);
          order.verify(modules).enable(club.symbolicName(), false);
          order.verify(modules).enable(club.symbolicName(), true);
        });
  }

  @Test
  void aPartOfTheSuiteCannotBeLeftOut() throws Exception {
    run(
        false,
        1,
        (desk, root) -> {
          press(root, "own &parts");
          list(root).select(suite.symbolicName());
          assertTrue(find(root, Label.class, "thread series: BA").isPresent());
          assertTrue(find(root, Button.class, "Leave it out").isEmpty());
        });
  }

  @Test
  void theFindBoxKnowsModulesAndTheyAreShown() throws Exception {
    run(
        false,
        1,
        (desk, root) -> {
          List<Page.Found> found = page.find("rules");
          assertEquals(1, found.size());
          page.show(found.get(0));
          assertEquals(faulty, list(root).selection().get(0));
          assertEquals(List.of(), page.find("jts"), "libraries are not what a person looks for");
        });
  }
}
