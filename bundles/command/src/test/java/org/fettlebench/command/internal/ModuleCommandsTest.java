package org.fettlebench.command.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.fettlebench.command.internal.Session.Answer;
import org.fettlebench.command.internal.suite.ModuleLeaveOut;
import org.fettlebench.command.internal.suite.ModuleLetIn;
import org.fettlebench.command.internal.suite.ModuleList;
import org.fettlebench.modules.Module;
import org.fettlebench.modules.Modules;
import org.junit.jupiter.api.Test;

class ModuleCommandsTest {
  private final Modules modules = mock(Modules.class);
  private final Session session =
      new Session(new ModuleList(modules), new ModuleLeaveOut(modules), new ModuleLetIn(modules));

  private static Module module(
      String name, boolean dropped, boolean working, Module.Fault... faults) {
    return new Module(
        "org.example." + name,
        name,
        "Adds " + name + ".",
        "1.0.0",
        "",
        dropped,
        "",
        working,
        working ? "working" : "needs the package org.example.oil",
        Instant.EPOCH,
        List.of("command: " + name + " run"),
        List.of(faults));
  }

  private Answer type(List<Module> installed, String... words) {
    when(modules.installed()).thenReturn(installed);
    when(modules.folder()).thenReturn(Path.of("/club/modules"));
    return session.type(words);
  }

  @Test
  void tellsWhatAClubsModuleAddsAndLeavesTheSuitesPartsOut() {
    List<Module> installed = List.of(module("ours", true, true), module("suite", false, false));
    Answer answer = type(installed, "module", "list");
    assertEquals(
        "ours 1.0.0: working\n  Adds ours.\n  adds command: ours run\nmodules folder: /club/modules\n",
        answer.out());
    assertEquals(0, answer.status());
    assertTrue(type(installed, "module", "list", "--all").out().contains("suite 1.0.0: needs"));
  }

  @Test
  void saysByTheStatusThatAModuleDoesNotWorkOrWentWrong() {
    assertEquals(1, type(List.of(module("ours", true, false)), "module", "list").status());
    Module.Fault fault = new Module.Fault(Instant.EPOCH, "checking joint Gland", "no oil");
    Answer answer = type(List.of(module("ours", true, true, fault)), "module", "list");
    assertEquals(1, answer.status());
    assertTrue(answer.out().contains(", checking joint Gland: no oil\n"), answer.out());
  }

  @Test
  void tellsAFewOfManyFaultsAndHowManyMoreThereAre() {
    Module.Fault[] seven =
        IntStream.rangeClosed(1, 7)
            .mapToObj(i -> new Module.Fault(Instant.EPOCH, "checking joint " + i, "no oil"))
            .toArray(Module.Fault[]::new);
    String told = type(List.of(module("ours", true, true, seven)), "module", "list").out();
    assertTrue(told.startsWith("ours 1.0.0: working, with faults\n"), told);
    assertTrue(told.contains("checking joint 5") && !told.contains("checking joint 6"), told);
    assertTrue(told.contains("\n  and 2 older faults; --json and the log have them all\n"), told);
    String data =
        type(List.of(module("ours", true, true, seven)), "module", "list", "--json").out();
    assertTrue(data.contains("checking joint 7"), data);
  }

  @Test
  void leavesAClubsModuleOutAndLetsItIn() {
    List<Module> installed = List.of(module("ours", true, true), module("suite", false, true));
    assertEquals(0, type(installed, "module", "leave-out", "org.example.ours").status());
    verify(modules).enable("org.example.ours", false);
    assertEquals(0, type(installed, "module", "let-in", "Ours").status());
    verify(modules).enable("org.example.ours", true);
  }

  @Test
  void doesNotSwitchTheSuitesOwnPartsOff() {
    List<Module> installed = List.of(module("ours", true, true), module("suite", false, true));
    Answer refused = type(installed, "module", "leave-out", "org.example.suite");
    assertEquals(2, refused.status());
    assertFalse(refused.err().isBlank());
    verify(modules, never()).enable("org.example.suite", false);
  }
}
