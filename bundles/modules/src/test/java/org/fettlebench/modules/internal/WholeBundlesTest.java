package org.fettlebench.modules.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.fettlebench.testkit.BundleJar;
import org.fettlebench.testkit.FelixHarness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;

/** The bundles as they are shipped, nothing shared with the test: their manifests must be right. */
class WholeBundlesTest {
  @TempDir Path data;

  @Test
  void aDroppedTableIsReadAndListedAsWhatItAdds() throws Exception {
    Path folder = Files.createDirectories(data.resolve("modules"));
    try (FelixHarness felix =
        FelixHarness.sharing().property("fettlebench.data", data.toString()).start()) {
      felix.start(
          "org.fettlebench.measure",
          "org.fettlebench.tables.api",
          "org.fettlebench.modules.api",
          "org.fettlebench.modules",
          "org.fettlebench.tables");
      felix.start(
          felix.install(
              BundleJar.named("club.series")
                  .file("FETTLEBENCH/tables/club.csv", table("Club 36 tpi", "# source: taps\n"))
                  .file("FETTLEBENCH/tables/bad.csv", table("Without source", ""))
                  .write(folder.resolve("series.jar"))));
      assertEquals("nothing is unsatisfied", felix.doctor());
      String listed = installed(felix.context());
      assertTrue(listed.contains("contributions=[thread series: Club 36 tpi]"), listed);
      assertTrue(listed.contains("doing=reading the table FETTLEBENCH/tables/bad.csv"), listed);
      assertTrue(listed.contains("the header has no 'source'"), listed);
    }
  }

  /** Asks by name: the test's own type of that name is another one. */
  private static String installed(BundleContext context) throws Exception {
    ServiceReference<?> reference =
        context.getAllServiceReferences("org.fettlebench.modules.Modules", null)[0];
    Object modules = context.getService(reference);
    Class<?> type = modules.getClass().getInterfaces()[0];
    return type.getMethod("installed").invoke(modules).toString();
  }

  private static String table(String title, String source) {
    return "# kind: thread-series\n# id: CLUB\n# title: "
        + title
        + "\n"
        + source
        + "# standing: measured by the club\ndesignation,major_in\none,3/16\n";
  }
}
