package org.fettlebench.command.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToIntFunction;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.fettlebench.command.internal.Session.Answer;
import org.fettlebench.testkit.FelixHarness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;

/** The bundle as it is shipped, with the providers' bundles, in a real framework. */
class CommandsInFelixTest {
  private static final Path FILES = Path.of("src/test/resources/guide");

  @TempDir Path data;

  private FelixHarness felix() {
    FelixHarness felix =
        FelixHarness.sharing().property("fettlebench.data", data.toString()).start();
    felix.start("org.locationtech.jts.jts-core");
    for (String name :
        List.of(
            "measure",
            "drawing",
            "modules.api",
            "tables.api",
            "threads.api",
            "tooling.api",
            "fasteners.api",
            "fits.api",
            "holes.api",
            "castings.api",
            "store.api",
            "club.api",
            "kits.api",
            "command.api",
            "paper.api",
            "modules",
            "tables",
            "threads",
            "tooling",
            "fasteners",
            "fits",
            "holes",
            "castings",
            "store.derby",
            "club.store",
            "kits",
            "paper",
            "command")) {
      felix.start("org.fettlebench." + name);
    }
    return felix;
  }

  private static Answer type(FelixHarness felix, String... words) {
    @SuppressWarnings("unchecked")
    ToIntFunction<Map<String, Object>> command =
        felix.await(ToIntFunction.class, "(fettlebench.main=command)");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        command.applyAsInt(
            Map.of(
                "args", List.of(words),
                "cwd", FILES.toAbsolutePath().toString(),
                "in", new ByteArrayInputStream(new byte[0]),
                "out", new PrintStream(out, false, StandardCharsets.UTF_8),
                "err", new PrintStream(err, false, StandardCharsets.UTF_8)));
    return new Answer(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void everyCommandIsThereAndTheMainJobIsDone() {
    try (FelixHarness felix = felix();
        FreshClub other = new FreshClub(data.resolve("other"))) {
      Answer help = type(felix, "--help");
      for (var command : AllCommands.of(other, data)) {
        assertTrue(
            help.out().contains("  " + command.usage().words() + " "),
            () -> command.usage().words() + " is missing: " + felix.doctor());
      }
      assertEquals("", type(felix, "stock", "receive", "--file", "stock.csv").err());
      Answer check = type(felix, "kit", "check", "pump.kit.toml", "--json");
      assertEquals("", check.err());
      assertEquals(1, check.status());
      assertTrue(check.out().contains("\"verdict\" : \"fouls\""), check.out());
    }
  }

  @Test
  void theWordsThatCommandsTellBeforeTheyAreMadeAreThoseOfTheirUsages() throws Exception {
    try (FelixHarness felix = felix();
        FreshClub other = new FreshClub(data.resolve("other"))) {
      felix.await(ToIntFunction.class, "(fettlebench.main=command)");
      Set<String> told = new TreeSet<>();
      for (var reference :
          felix.context().getAllServiceReferences(null, "(" + Commands.WORDS + "=*)")) {
        told.add(String.valueOf(reference.getProperty(Commands.WORDS)));
      }
      Set<String> used = new TreeSet<>();
      Stream.of(AllCommands.of(other, data)).forEach(one -> used.add(one.usage().words()));
      assertEquals(used, told);
    }
  }

  @Test
  void aKitIsPutOnPaper() throws IOException {
    Path pdf = data.resolve("pump.pdf");
    try (FelixHarness felix = felix()) {
      Answer check = type(felix, "kit", "check", "pump.kit.toml", "--report", pdf.toString());
      assertEquals("", check.err());
      assertTrue(Files.size(pdf) > 1000);
    }
  }

  @Test
  void aSeriesComesAndGoesWithTheJarThatBringsIt() throws Exception {
    try (FelixHarness felix = felix()) {
      assertEquals(2, type(felix, "thread", "show", "1/4 x 36 OC").status());
      Bundle module = felix.install(module());
      module.start();
      Answer there = type(felix, "thread", "show", "1/4 x 36 OC");
      assertEquals("", there.err());
      assertTrue(there.out().startsWith("1/4 x 36 OC  "), there.out());
      module.uninstall();
      assertEquals(2, type(felix, "thread", "show", "1/4 x 36 OC").status());
    }
  }

  private Path module() throws IOException {
    Manifest manifest = new Manifest();
    Attributes lines = manifest.getMainAttributes();
    lines.putValue("Manifest-Version", "1.0");
    lines.putValue("Bundle-ManifestVersion", "2");
    lines.putValue("Bundle-SymbolicName", "org.example.our-threads");
    Path jar = data.resolve("our-threads.jar");
    try (OutputStream file = Files.newOutputStream(jar);
        JarOutputStream out = new JarOutputStream(file, manifest)) {
      out.putNextEntry(new ZipEntry("FETTLEBENCH/tables/our-36.csv"));
      out.write(
          """
          # kind: thread-series
          # id: OC
          # title: Our club's 36 threads per inch
          # source: club drawing 14
          # standing: measured by the club
          # form: whitworth
          # designation: {size} x {tpi} OC
          size,major_in,tpi
          1/4,1/4,36
          """
              .getBytes(StandardCharsets.UTF_8));
    }
    return jar;
  }
}
