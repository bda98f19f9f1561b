package org.fettlebench.modules.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.fettlebench.modules.Module;
import org.fettlebench.modules.Modules;
import org.fettlebench.modules.ModulesListener;
import org.fettlebench.testkit.BundleJar;
import org.fettlebench.testkit.FelixHarness;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;

/** With the file watcher of the product: jars come, are left out, and go while the suite runs. */
class DroppedModulesTest {
  @TempDir Path data;
  private Path folder;
  private final Semaphore told = new Semaphore(0);

  @BeforeEach
  void makeTheFolder() throws Exception {
    folder = Files.createDirectories(data.resolve("modules"));
  }

  private FelixHarness start() {
    FelixHarness felix =
        FelixHarness.sharing("org.fettlebench.modules.api", "org.fettlebench.tables.api")
            .property("fettlebench.data", data.toString())
            .property("felix.fileinstall.dir", folder.toString())
            .property("felix.fileinstall.tmpdir", data.resolve("incoming").toString())
            .property("felix.fileinstall.poll", "100")
            .property("felix.fileinstall.filter", ".*\\.jar")
            .property("felix.fileinstall.noInitialDelay", "true")
            .start();
    ModulesListener listener = told::release;
    felix.context().registerService(ModulesListener.class, listener, null);
    felix.start("org.fettlebench.measure", "org.fettlebench.modules");
    felix.await(Modules.class);
    felix.start("org.apache.felix.fileinstall");
    return felix;
  }

  private static List<String> dropped(FelixHarness felix) {
    return felix.await(Modules.class).installed().stream()
        .filter(Module::dropped)
        .map(module -> module.symbolicName() + " " + module.state())
        .toList();
  }

  private void awaitDropped(FelixHarness felix, String... wanted) throws InterruptedException {
    while (!dropped(felix).equals(List.of(wanted))) {
      assertTrue(told.tryAcquire(10, TimeUnit.SECONDS), () -> dropped(felix).toString());
    }
  }

  @Test
  void whatIsLeftOutStaysOutWhileOthersComeAndGo() throws Exception {
    try (FelixHarness felix = start()) {
      BundleJar.named("club.a").write(folder.resolve("a.jar"));
      awaitDropped(felix, "club.a working");
      felix.await(Modules.class).enable("club.a", false);
      BundleJar.named("club.b").write(folder.resolve("b.jar"));
      awaitDropped(felix, "club.a left out", "club.b working");
      assertEquals(Bundle.RESOLVED, felix.bundle("club.a").orElseThrow().getState());
    }
    try (FelixHarness felix = start()) {
      awaitDropped(felix, "club.a left out", "club.b working");
      assertEquals(Bundle.RESOLVED, felix.bundle("club.a").orElseThrow().getState());
      Files.delete(folder.resolve("b.jar"));
      awaitDropped(felix, "club.a left out");
      felix.await(Modules.class).enable("club.a", true);
      assertEquals(List.of("club.a working"), dropped(felix));
    }
  }

  private void version(String version, String file) {
    // It needs something of Java, as every module with code does.
    BundleJar.named("club.a")
        .header("Bundle-Version", version)
        .header("Import-Package", "java.io")
        .write(folder.resolve(file));
  }

  @Test
  void ofTwoVersionsOnlyTheNewerRunsAndTheOlderComesBackWhenItGoes() throws Exception {
    String aside = "club.a put aside: version 1.1.0 is here too; delete the older jar";
    try (FelixHarness felix = start()) {
      version("1.0.0", "a-1.jar");
      awaitDropped(felix, "club.a working");
      version("1.1.0", "a-2.jar");
      awaitDropped(felix, aside, "club.a working");
      BundleJar.named("club.b").header("Import-Package", "java.io").write(folder.resolve("b.jar"));
      awaitDropped(felix, aside, "club.a working", "club.b working");
      Files.delete(folder.resolve("b.jar"));
      Files.delete(folder.resolve("a-2.jar"));
      awaitDropped(felix, "club.a working");
      version("1.1.0", "a-0.jar");
      awaitDropped(felix, aside, "club.a working");
    }
    try (FelixHarness felix = start()) {
      awaitDropped(felix, aside, "club.a working");
      Files.delete(folder.resolve("a-0.jar"));
      awaitDropped(felix, "club.a working");
      assertEquals(List.of(), felix.await(Modules.class).installed().get(0).faults());
    }
  }

  @Test
  void aJarWithoutAWorkingManifestIsListedWithTheReason() throws Exception {
    try (FelixHarness felix = start()) {
      Files.writeString(folder.resolve("broken.jar"), "no jar at all");
      BundleJar.named("club.a").write(folder.resolve("club.jar"));
      awaitDropped(felix, "broken.jar is no module: it cannot be read as a jar", "club.a working");
    }
  }
}
