package org.fettlebench.suite.itest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.suite.itest.club.RefusingCommand;
import org.fettlebench.suite.itest.club.RefusingRule;
import org.fettlebench.testkit.BundleJar;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A club's module comes and goes while the window is open, and a bad one harms nothing. */
@Timeout(240)
class ClubModuleTest {
  private static final String SAMPLE = "org.fettlebench.sample.club";
  private static final String SERIES_THREAD = "3/16 x 36 SC";

  /** A joint that the sample's rule has something to say of. */
  private static final String KIT =
      """
      [kit]
      name = "Small thing"

      [[joint]]
      name = "plate"
      part = "base"
      count = 2
      fastener = "10 BA round x 1/4 in brass"
      tapped = { material = "cast iron", full-thread = "5 mm" }
      method = "scribe-and-dot"
      """;

  private static final String RULE_SAYS = "finer than 8 BA in iron";

  @TempDir Path dir;
  private Suite suite;
  private Process window;

  @BeforeEach
  void make() {
    suite = new Suite(dir.resolve("club data"));
  }

  private void open() {
    assumeTrue(System.getenv("DISPLAY") != null, "wants a screen; verify makes one");
    window = suite.openWindow();
    assertEquals(0, suite.call("module", "list").status());
  }

  @AfterEach
  void close() throws InterruptedException {
    if (window != null) {
      window.destroyForcibly().waitFor();
    }
  }

  private Optional<Map<String, Object>> module(String name) {
    return suite.call("module", "list", "--json").list("modules").stream()
        .filter(module -> module.get("symbolicName").equals(name))
        .findFirst();
  }

  private String contributions() {
    return contributions(SAMPLE);
  }

  private String contributions(String name) {
    return module(name).map(module -> module.get("contributions").toString()).orElse("");
  }

  private boolean sampleAddsAll() {
    String added = contributions();
    return List.of("thread series: ", "kit check rule: ", "page: ", "command: club rules").stream()
        .allMatch(added::contains);
  }

  private boolean ruleSpeaks() throws IOException {
    Path kit = Files.writeString(dir.resolve("small.kit.toml"), KIT);
    Suite.Finished checked = suite.call("kit", "check", kit.toString(), "--json");
    assertTrue(checked.status() < 2, checked.toString());
    return checked.out().contains(RULE_SAYS);
  }

  private void dropSample() throws IOException {
    Path partial = suite.modules().resolve("sample.part");
    Files.copy(Suite.sampleJar(), partial);
    Files.move(partial, suite.modules().resolve("sample.jar"));
  }

  @Test
  void allItAddsAppearsAndGoesAgain() throws IOException {
    open();
    assertEquals(2, suite.call("thread", "show", SERIES_THREAD).status());
    assertFalse(ruleSpeaks());
    dropSample();
    Suite.eventually(this::contributions, this::sampleAddsAll);
    assertEquals(true, module(SAMPLE).orElseThrow().get("dropped"));
    assertEquals(0, suite.call("thread", "show", SERIES_THREAD).status());
    assertEquals(0, suite.call("club", "rules").status());
    assertTrue(ruleSpeaks());
    Files.delete(suite.modules().resolve("sample.jar"));
    Suite.eventually(this::contributions, () -> module(SAMPLE).isEmpty());
    assertEquals(2, suite.call("thread", "show", SERIES_THREAD).status());
    assertEquals(2, suite.call("club", "rules").status());
    assertFalse(ruleSpeaks());
    assertTrue(window.isAlive());
  }

  @Test
  void itIsThereOnTheCommandLineWithoutAWindow() throws IOException {
    Files.createDirectories(suite.modules());
    dropSample();
    Suite.Finished shown = suite.call("thread", "show", SERIES_THREAD, "--json");
    assertEquals(0, shown.status(), shown.toString());
    assertEquals("", shown.err());
    // 3/16 in, as the sample's table says.
    assertEquals(
        4.7625, ((Number) shown.list("threads").get(0).get("majorMm")).doubleValue(), 1e-9);
    Files.delete(suite.modules().resolve("sample.jar"));
    assertEquals(2, suite.call("thread", "show", SERIES_THREAD).status());
  }

  @Test
  void oneThatThrowsIsReportedAndTheRestWorks() throws IOException {
    open();
    Suite.Finished without = suite.call("demo", "check", "--json");
    refusingModule(suite.modules().resolve("refusing.jar"));
    Suite.eventually(
        () -> suite.call("module", "list").out(),
        // It is listed as soon as it is installed, a moment before its rule is taken in.
        () -> contributions("club.refusing").contains("club rule: refusing"));
    Suite.Finished with = suite.call("demo", "check", "--json");
    assertEquals(without.status(), with.status());
    List<Map<String, Object>> joints = with.list("joints");
    assertTrue(joints.stream().allMatch(ClubModuleTest::forgetUnheardRule), with.out());
    assertEquals(
        without.list("joints"),
        joints,
        "but for saying that a rule did not speak, a module that throws changes nothing");
    Suite.eventually(() -> faults(), () -> faults().contains(RefusingRule.SAID));
    assertTrue(faults().contains(RefusingCommand.SAID), faults());
    assertEquals(0, suite.call("thread", "show", "2 BA").status());
    assertTrue(window.isAlive());
  }

  /** Takes the finding that the rule did not speak out of a joint; false if there was none. */
  @SuppressWarnings("unchecked")
  private static boolean forgetUnheardRule(Map<String, Object> joint) {
    return ((List<Map<String, Object>>) joint.get("findings"))
        .removeIf(finding -> finding.get("sentence").toString().contains("refusing\" failed"));
  }

  private String faults() {
    return module("club.refusing").map(module -> module.get("faults").toString()).orElse("");
  }

  private static void refusingModule(Path jar) {
    BundleJar.named("club.refusing")
        .header("Import-Package", "org.fettlebench.kits,org.fettlebench.command")
        .header("Service-Component", "OSGI-INF/rule.xml,OSGI-INF/command.xml")
        .header("Require-Capability", "osgi.extender;filter:=\"(osgi.extender=osgi.component)\"")
        .type(RefusingRule.class)
        .type(RefusingCommand.class)
        .file("OSGI-INF/rule.xml", component(RefusingRule.class, "org.fettlebench.kits.JointRule"))
        .file(
            "OSGI-INF/command.xml",
            component(RefusingCommand.class, "org.fettlebench.command.Command"))
        .write(jar);
  }

  private static String component(Class<?> type, String service) {
    return """
        <scr:component xmlns:scr="http://www.osgi.org/xmlns/scr/v1.3.0" name="%s">
          <implementation class="%s"/>
          <service><provide interface="%s"/></service>
        </scr:component>
        """
        .formatted(type.getName(), type.getName(), service);
  }
}
