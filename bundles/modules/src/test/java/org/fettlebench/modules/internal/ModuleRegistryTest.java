package org.fettlebench.modules.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.fettlebench.modules.Faults;
import org.fettlebench.modules.Module;
import org.fettlebench.modules.Modules;
import org.fettlebench.modules.ModulesListener;
import org.fettlebench.modules.internal.club.FailingPart;
import org.fettlebench.modules.internal.club.StubbornActivator;
import org.fettlebench.testkit.BundleJar;
import org.fettlebench.testkit.FelixHarness;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;
import org.osgi.framework.startlevel.BundleStartLevel;

/** In a real framework: what is seen of modules that work, and of those that do not. */
class ModuleRegistryTest {
  @TempDir Path data;
  private FelixHarness felix;
  private Modules modules;
  private final Semaphore told = new Semaphore(0);

  @BeforeEach
  void startTheFramework() throws Exception {
    Files.createDirectories(data.resolve("modules"));
    start();
  }

  private void start() {
    felix =
        FelixHarness.sharing(
                "org.fettlebench.measure",
                "org.fettlebench.tables.api",
                "org.fettlebench.modules.api")
            .property("fettlebench.data", data.toString())
            .start();
    ModulesListener listener = told::release;
    felix.context().registerService(ModulesListener.class, listener, null);
    felix.start("org.fettlebench.modules");
    modules = felix.await(Modules.class);
  }

  @AfterEach
  void stopTheFramework() {
    felix.close();
  }

  private Module module(String name) {
    return modules.installed().stream()
        .filter(module -> module.symbolicName().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + name + " in " + modules.installed()));
  }

  /** Waits, told by told, until a module is as wanted. */
  private void awaitModule(String name, Predicate<Module> wanted) throws InterruptedException {
    while (!wanted.test(module(name))) {
      assertTrue(told.tryAcquire(10, TimeUnit.SECONDS), () -> module(name) + "\n" + felix.doctor());
    }
  }

  private Path jar(String name) {
    return data.resolve("modules").resolve(name + ".jar");
  }

  @Test
  void listsDroppedModulesFirstThenTheSuiteThenLibraries() {
    felix.start(
        felix.install(
            BundleJar.named("club.series")
                .header("Bundle-Name", "Club series")
                .header("Bundle-Description", "Threads of the club.")
                .header("Bundle-Vendor", "The club")
                .write(jar("series"))));
    Module first = modules.installed().get(0);
    assertEquals("club.series", first.symbolicName());
    assertEquals("Club series", first.title());
    assertEquals("Threads of the club.", first.description());
    assertEquals("1.0.0", first.version());
    assertEquals("The club", first.vendor());
    assertEquals(jar("series").toString(), first.location());
    assertTrue(first.dropped() && first.working());
    assertEquals("working", first.state());
    assertEquals("org.fettlebench.modules", modules.installed().get(1).symbolicName());
    assertTrue(modules.installed().stream().skip(2).allMatch(Module::library));
    assertEquals(data.resolve("modules"), modules.folder());
  }

  @Test
  void saysWhatAnUnresolvedModuleNeeds() {
    felix.install(
        BundleJar.named("club.lacking")
            .header("Import-Package", "no.such.thing;version=\"[1.2,2)\"")
            .write(jar("lacking")));
    felix.install(
        BundleJar.named("club.behind").header("Require-Bundle", "club.lacking").write(jar("b")));
    assertEquals(
        "needs the package no.such.thing from 1.2.0 under 2.0.0, which nothing offers",
        module("club.lacking").state());
    assertFalse(module("club.lacking").working());
    assertEquals(
        "needs the bundle club.lacking of a module that does not work itself",
        module("club.behind").state());
  }

  @Test
  void saysWhatAWaitingPartWaitsFor() {
    felix.start(
        felix.install(part("club.waiting", "<reference name='x' interface='club.Missing'/>")));
    assertEquals(
        "its part FailingPart waits for club.Missing, which nothing offers",
        module("club.waiting").state());
  }

  @Test
  void saysWhyAPartDidNotStart() throws Exception {
    felix.start(felix.install(part("club.failing", "")));
    awaitModule("club.failing", module -> !module.working());
    assertEquals(
        "its part FailingPart did not start: java.lang.IllegalStateException: no seat today",
        module("club.failing").state());
  }

  @Test
  void saysWhyAModuleDidNotStart() throws Exception {
    Bundle stubborn =
        felix.install(
            BundleJar.named("club.stubborn")
                .type(StubbornActivator.class)
                .header("Bundle-Activator", StubbornActivator.class.getName())
                .header("Import-Package", "org.osgi.framework")
                .write(jar("stubborn")));
    assertThrows(BundleException.class, stubborn::start);
    awaitModule("club.stubborn", module -> module.state().startsWith("did not start"));
    assertEquals(
        "did not start: java.lang.IllegalStateException: will not",
        module("club.stubborn").state());
  }

  @Test
  void aModuleLeftOutStaysOutAlsoWithAFreshCache() throws Exception {
    Path jar = BundleJar.named("club.series").write(jar("series"));
    Bundle club = felix.install(jar);
    felix.start(club);
    modules.enable("club.series", false);
    assertEquals(Bundle.RESOLVED, club.getState());
    assertEquals("left out", module("club.series").state());
    felix.close();

    start();
    club = felix.install(jar);
    felix.start(club);
    assertEquals(Bundle.RESOLVED, club.getState());
    assertEquals("left out", module("club.series").state());
    modules.enable("club.series", true);
    assertEquals(Bundle.ACTIVE, club.getState());
    assertEquals("working", module("club.series").state());
  }

  @Test
  void refusesToLeaveOutTheSuiteItself() {
    assertThrows(
        IllegalArgumentException.class, () -> modules.enable("org.fettlebench.modules", false));
    assertThrows(IllegalArgumentException.class, () -> modules.enable("none", false));
  }

  @Test
  void listsJarsThatBecameNoModule() throws Exception {
    Files.writeString(jar("broken"), "this is no jar");
    try (var out = new java.util.jar.JarOutputStream(Files.newOutputStream(jar("plain")))) {
      out.putNextEntry(new java.util.zip.ZipEntry("readme.txt"));
    }
    felix.install(BundleJar.named("club.twice").write(jar("once")));
    BundleJar.named("club.twice").write(jar("twice"));
    assertEquals("is no module: it cannot be read as a jar", module("broken.jar").state());
    assertEquals(
        "is no module: its manifest has no Bundle-SymbolicName line", module("plain.jar").state());
    assertEquals(
        List.of(
            "is not let in: a module of this name and version is there already", "is not started"),
        modules.installed().stream()
            .filter(module -> module.symbolicName().equals("club.twice"))
            .map(Module::state)
            .sorted()
            .toList());
  }

  @Test
  void keepsFaultsWithTheirModuleAndTells() throws Exception {
    Bundle club = felix.install(BundleJar.named("club.rule").write(jar("rule")));
    felix.start(club);
    final long before = modules.revision();
    felix.await(Faults.class).report(club, "checking joint Gland", new IllegalStateException("no"));
    awaitModule("club.rule", module -> !module.faults().isEmpty());
    assertEquals("checking joint Gland", module("club.rule").faults().get(0).doing());
    assertTrue(modules.revision() > before);
  }

  @Test
  void aListenerThatThrowsDoesNotKeepOthersFromBeingTold() throws Exception {
    ModulesListener bad =
        () -> {
          throw new IllegalStateException("tired");
        };
    felix.context().registerService(ModulesListener.class, bad, null);
    Semaphore after = new Semaphore(0);
    ModulesListener good = after::release;
    felix.context().registerService(ModulesListener.class, good, null);
    felix.start(felix.install(BundleJar.named("club.one").write(jar("one"))));
    assertTrue(after.tryAcquire(10, TimeUnit.SECONDS));
  }

  private Path part(String name, String reference) {
    return BundleJar.named(name)
        .type(FailingPart.class)
        .header("Service-Component", "OSGI-INF/part.xml")
        .header("Require-Capability", "osgi.extender;filter:=\"(osgi.extender=osgi.component)\"")
        .file(
            "OSGI-INF/part.xml",
            """
            <component xmlns="http://www.osgi.org/xmlns/scr/v1.3.0" name="part" immediate="true">
              <implementation class="%s"/>
              %s
            </component>
            """
                .formatted(FailingPart.class.getName(), reference))
        .write(jar(name));
  }

  @Test
  void whatStartsOnlyWithAWindowRestsAndIsNotIll() throws Exception {
    Bundle late = felix.install(BundleJar.named("club.late").write(jar("late")));
    late.adapt(BundleStartLevel.class).setStartLevel(30);
    late.start();
    assertTrue(module("club.late").working());
    assertEquals("rests until a window is open", module("club.late").state());
    late.adapt(BundleStartLevel.class).setStartLevel(1);
    awaitModule("club.late", module -> module.state().equals("working"));
  }
}
