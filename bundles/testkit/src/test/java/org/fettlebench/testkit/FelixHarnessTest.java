package org.fettlebench.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import org.fettlebench.testkit.sample.SampleAnswer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;
import org.osgi.service.component.runtime.ServiceComponentRuntime;

class FelixHarnessTest {
  @TempDir Path folder;
  private FelixHarness felix;

  @BeforeEach
  void startTheFramework() {
    felix = FelixHarness.sharing().property("sample.key", "value").start();
  }

  @AfterEach
  void stopTheFramework() {
    felix.close();
  }

  private Bundle answering(String name, String reference) {
    return felix.install(
        BundleJar.named(name)
            .type(SampleAnswer.class)
            .header("Service-Component", "OSGI-INF/answer.xml")
            .header(
                "Require-Capability", "osgi.extender;filter:=\"(osgi.extender=osgi.component)\"")
            .file(
                "OSGI-INF/answer.xml",
                """
                <component xmlns="http://www.osgi.org/xmlns/scr/v1.3.0" name="answer">
                  <implementation class="%s"/>
                  <service><provide interface="java.util.concurrent.Callable"/></service>
                  %s
                </component>
                """
                    .formatted(SampleAnswer.class.getName(), reference))
            .write(folder.resolve(name + ".jar")));
  }

  @Test
  void runsDeclarativeServicesAndSharesTypes() throws Exception {
    assertTrue(felix.await(ServiceComponentRuntime.class).getComponentDescriptionDTOs().isEmpty());
    assertEquals("value", felix.context().getProperty("sample.key"));
    Bundle answering = answering("sample.answer", "");
    CompletableFuture<Object> answer =
        CompletableFuture.supplyAsync(
            () -> {
              try {
                return felix.await(Callable.class).call();
              } catch (Exception refused) {
                throw new IllegalStateException(refused);
              }
            });
    felix.start(answering);
    assertEquals(42, answer.get());
    assertEquals(answering, felix.bundle("sample.answer").orElseThrow());
    answering.stop();
    felix.awaitGone(Callable.class);
  }

  @Test
  void waitsUntilAServiceIsGone() throws Exception {
    Bundle answering = answering("sample.answer", "");
    felix.start(answering);
    felix.await(Callable.class);
    CompletableFuture<Void> gone =
        CompletableFuture.runAsync(() -> felix.awaitGone(Callable.class));
    answering.stop();
    gone.get();
  }

  @Test
  void theDoctorSaysWhatIsLacking() {
    assertEquals("nothing is unsatisfied", felix.doctor());
    felix.start(answering("sample.waiting", "<reference name='x' interface='no.Such'/>"));
    felix.install(
        BundleJar.named("sample.lacking")
            .header("Import-Package", "no.such.thing")
            .write(folder.resolve("lacking.jar")));
    String said = felix.doctor();
    assertTrue(said.contains(SampleAnswer.class.getName() + " waits for no.Such"), said);
    assertTrue(said.contains("no.such.thing"), said);
  }

  @Test
  void aBundleThatDoesNotStartFailsTheTest() throws BundleException {
    Bundle lacking =
        felix.install(
            BundleJar.named("sample.lacking")
                .header("Import-Package", "no.such.thing")
                .write(folder.resolve("lacking.jar")));
    assertThrows(AssertionError.class, () -> felix.start(lacking));
    assertThrows(IllegalArgumentException.class, () -> felix.start("no.such.bundle"));
  }
}
