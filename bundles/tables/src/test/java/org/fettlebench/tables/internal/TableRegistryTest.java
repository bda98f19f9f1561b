package org.fettlebench.tables.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.Tables;
import org.fettlebench.testkit.BundleJar;
import org.fettlebench.testkit.FelixHarness;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;

/** In a real framework: tables come and go with their bundles. */
class TableRegistryTest {
  private static final String CLUB_SERIES = series("CLUB36", "Club 36 tpi");

  @TempDir Path folder;
  private FelixHarness felix;
  private Tables tables;
  private final List<String> faults = new ArrayList<>();

  @BeforeEach
  void startTheFramework() throws Exception {
    Path modules = Files.createDirectories(folder.resolve("modules"));
    felix =
        FelixHarness.sharing(
                "org.fettlebench.measure",
                "org.fettlebench.tables.api",
                "org.fettlebench.modules.api")
            .property("fettlebench.data", folder.toString())
            .property("fettlebench.modules", modules.toString())
            .start();
    Faults log =
        (contribution, doing, cause) ->
            faults.add(
                ((Bundle) contribution).getSymbolicName()
                    + ": "
                    + doing
                    + ": "
                    + cause.getMessage());
    felix.context().registerService(Faults.class, log, null);
    felix.start("org.fettlebench.tables");
    tables = felix.await(Tables.class);
  }

  @AfterEach
  void stopTheFramework() {
    felix.close();
  }

  @Test
  void tablesComeAndGoWithTheirBundle() throws BundleException {
    final long before = tables.revision();
    Bundle club = felix.install(jar("modules", "club.series", CLUB_SERIES));
    assertEquals(List.of(), tables.all());
    felix.start(club);
    Table series = tables.find("thread-series", "CLUB36").orElseThrow();
    assertEquals("Club 36 tpi", series.title());
    assertEquals("club.series", series.module());
    assertEquals(Standing.MEASURED, series.source().standing());
    final long with = tables.revision();
    assertTrue(with > before);
    club.stop();
    assertEquals(List.of(), tables.all());
    assertTrue(tables.revision() > with);
    assertEquals(List.of(), faults);
  }

  @Test
  void aFaultyTableIsReportedAndSpoilsNothingElse() {
    Path jar =
        BundleJar.named("club.mixed")
            .file("FETTLEBENCH/tables/bad.csv", CLUB_SERIES.replaceAll("# source.*\n", ""))
            .file("FETTLEBENCH/tables/good.csv", CLUB_SERIES)
            .file("FETTLEBENCH/tables/readme.txt", "not a table")
            .write(folder.resolve("modules/mixed.jar"));
    felix.start(felix.install(jar));
    assertEquals(1, tables.all().size());
    assertEquals(
        List.of(
            "club.mixed: reading the table FETTLEBENCH/tables/bad.csv:"
                + " FETTLEBENCH/tables/bad.csv: the header has no 'source': add a line"
                + " '# source: ...'"),
        faults);
  }

  @Test
  void theSuitesOwnTableStandsAndTheOtherIsReportedOnce() throws BundleException {
    Bundle club = felix.install(jar("modules", "aclub.series", series("BA", "Our BA")));
    felix.start(club);
    assertEquals("Our BA", tables.find("thread-series", "BA").orElseThrow().title());
    Bundle suite =
        felix.install(jar("", "org.fettlebench.series", series("BA", "British Association")));
    felix.start(suite);
    assertEquals("British Association", tables.find("thread-series", "BA").orElseThrow().title());
    felix.start(felix.install(jar("modules", "other", CLUB_SERIES)));
    assertEquals(2, tables.all().size());
    assertEquals(
        List.of(
            "aclub.series: taking up the table Our BA: org.fettlebench.series already has the"
                + " thread-series table BA: give this one another id"),
        faults);
    suite.stop();
    assertEquals("Our BA", tables.find("thread-series", "BA").orElseThrow().title());
  }

  @Test
  void aDroppedModuleIsNotTheSuitesOwnWhateverItsName() {
    felix.start(felix.install(jar("modules", "org.fettlebench.a", series("BA", "Pretended"))));
    felix.start(felix.install(jar("", "org.fettlebench.z", series("BA", "British Association"))));
    felix.start(felix.install(jar("modules", "b", CLUB_SERIES)));
    assertEquals(
        List.of("British Association", "Club 36 tpi"),
        tables.ofKind("thread-series").stream().map(Table::title).toList());
  }

  private Path jar(String place, String name, String table) {
    return BundleJar.named(name)
        .file("FETTLEBENCH/tables/series.csv", table)
        .write(folder.resolve(place).resolve(name + ".jar"));
  }

  private static String series(String id, String title) {
    return """
        # kind: thread-series
        # id: %s
        # title: %s
        # source: invented for this test
        # standing: measured by the club
        designation,major_in
        one,3/16
        """
        .formatted(id, title);
  }
}
