package org.fettlebench.sample.club;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;

import java.io.ByteArrayInputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.internal.HeadTables;
import org.fettlebench.fits.internal.HoleMethodTable;
import org.fettlebench.measure.Length;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.Threads;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.tooling.BlindHole;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.HoleChooser.BlindHoleRequest;
import org.fettlebench.tooling.TapLead;
import org.fettlebench.tooling.internal.DrillRegistry;
import org.fettlebench.tooling.internal.HoleChoice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.BundleContext;

/** Does what the page on extending says, and sees that it works. */
class ExtendingGuideTest {
  private static final String TABLE = "FETTLEBENCH/tables/our-36.csv";
  private static final Faults NONE =
      (contribution, doing, cause) -> {
        throw new AssertionError(doing, cause);
      };

  private static final BiConsumer<Table, RuntimeException> THROWING =
      (faulty, fault) -> {
        throw fault;
      };

  private final Guide guide = new Guide();

  private static Threads threads(Table table) {
    return new ThreadRegistry(FixedTables.of(List.of(table)), THROWING);
  }

  @Test
  void theModuleWithoutCodeIsAModuleWithAThreadSeries(@TempDir Path folder) throws Exception {
    Path jar = folder.resolve("our-threads.jar");
    byte[] lines = guide.typedInto("our-threads.mf").getBytes(StandardCharsets.UTF_8);
    Manifest manifest = new Manifest(new ByteArrayInputStream(lines));
    manifest.getMainAttributes().putValue("Manifest-Version", "1.0");
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest)) {
      out.putNextEntry(new ZipEntry(TABLE));
      out.write(guide.typedInto("our-threads/" + TABLE).getBytes(StandardCharsets.UTF_8));
    }
    try (JarFile made = new JarFile(jar.toFile());
        Reader text =
            new InputStreamReader(
                made.getInputStream(made.getEntry(TABLE)), StandardCharsets.UTF_8)) {
      String name = made.getManifest().getMainAttributes().getValue("Bundle-SymbolicName");
      assertEquals("org.example.our-threads", name);
      assertEquals(5, guide.typedInto("our-threads.mf").lines().count());
      ScrewThread thread =
          threads(TableFile.read(TABLE, name, text)).find("1/4 x 36 OC").orElseThrow();
      // Worked by hand: 25.4 mm / 36 and a Whitworth depth of 0.640327 pitch.
      assertEquals(0.705556, thread.pitch().millimetres(), 0.0000005);
      assertEquals(5.898214, thread.effective().millimetres(), 0.0000005);
    }
  }

  private List<Table> tables(String kind) throws Exception {
    List<Table> found = new ArrayList<>();
    for (String block : guide.blocks("csv")) {
      Table table = TableFile.read("the page", "org.example.our-club", new StringReader(block));
      if (table.kind().equals(kind)) {
        found.add(table);
      }
    }
    assertFalse(found.isEmpty(), "tables of kind " + kind + " on the page");
    return found;
  }

  @Test
  void theHeadsAreHeadsOfAThread() throws Exception {
    Threads threads = threads(shippedSeries());
    HeadTables heads =
        new HeadTables(mock(BundleContext.class), FixedTables.of(tables("heads")), NONE);
    Head head = heads.find("thin-hexagon", threads.find("2 BA").orElseThrow()).orElseThrow();
    assertEquals(7.0, head.acrossFlats().orElseThrow().millimetres());
  }

  private static Table shippedSeries() {
    return FixedTables.fromResources(ThreadRegistry.class, "/FETTLEBENCH/tables/ba.csv")
        .all()
        .get(0);
  }

  @Test
  void theHoleMethodsAreMethods() throws Exception {
    HoleMethodTable methods =
        new HoleMethodTable(
            mock(BundleContext.class), FixedTables.of(tables("hole-methods")), NONE);
    assertEquals(0.025, methods.find("club-mill").orElseThrow().sigmaPerAxisMm());
    assertEquals(3, methods.find("club-mill").orElseThrow().steps().size());
    // 0.05 normal and a circle of 0.03, whose variance per axis is a quarter of its square.
    assertEquals(
        Math.sqrt(0.0025 + 0.0009 / 4), methods.find("fly").orElseThrow().sigmaPerAxisMm(), 1e-12);
  }

  @Test
  void theDrillsAreDrills() throws Exception {
    DrillRegistry drills = new DrillRegistry(FixedTables.of(tables("drills")), THROWING);
    assertEquals(0.36, drills.find("jet 8").orElseThrow().diameter().millimetres());
  }

  @Test
  void theHabitsOfHolesAreTheClubs() throws Exception {
    List<Table> habits = new ArrayList<>();
    for (String kind :
        List.of(
            "clearance-holes",
            "thread-percent",
            "tapping-drills",
            "drill-oversize",
            "blind-holes")) {
      habits.addAll(tables(kind));
    }
    ThreadRegistry threads =
        new ThreadRegistry(FixedTables.of(List.of(clubSeries(), shippedSeries())), THROWING);
    HoleChoice holes = new HoleChoice(FixedTables.of(habits), threads, THROWING);
    assertEquals(65, holes.usualPercent("gunmetal").percent());
    ScrewThread five = threads.find("5 BA").orElseThrow();
    assertEquals(2.65, holes.listed(five).get(0).drill().diameter().millimetres());
    ScrewThread thread = threads.find("1/4 x 36 OC").orElseThrow();
    DrillSize drill = new DrillSize(Length.ofInches(0.257), List.of("F"));
    assertEquals(drill, holes.clearance(thread, List.of(drill)).get(0).drill());
    assertEquals(
        0.05,
        holes
            .tapping(
                threads.find("5 BA").orElseThrow(),
                28,
                List.of(new DrillSize(Length.ofMillimetres(3), List.of("3 mm"))))
            .get(0)
            .oversize()
            .orElseThrow()
            .millimetres());
    BlindHole hole =
        holes.blindHole(
            new BlindHoleRequest(
                thread,
                drill,
                Length.ofMillimetres(5),
                Length.ofMillimetres(20),
                TapLead.BOTTOMING,
                118));
    // By hand: 1.5 and 2 pitches of 25.4 / 36 mm.
    assertEquals(1.5 * 25.4 / 36, hole.tapLead().millimetres(), 0.000001);
    assertEquals(2 * 25.4 / 36, hole.chipRoom().millimetres(), 0.000001);
  }

  private Table clubSeries() throws Exception {
    String text = guide.typedInto("our-threads/" + TABLE);
    return TableFile.read(TABLE, "org.example.our-threads", new StringReader(text));
  }

  @Test
  void theClassesCompile(@TempDir Path folder) throws Exception {
    List<JavaFileObject> sources =
        guide.blocks("java").stream().map(Source::new).collect(Collectors.toList());
    assertEquals(3, sources.size());
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    DiagnosticCollector<JavaFileObject> said = new DiagnosticCollector<>();
    List<String> options =
        List.of(
            "-d", folder.toString(), "-proc:none", "-cp", System.getProperty("java.class.path"));
    boolean done = compiler.getTask(null, null, said, options, null, sources).call();
    assertTrue(done, said.getDiagnostics().toString());
    try (Stream<Path> made = Files.walk(folder)) {
      assertTrue(made.anyMatch(file -> file.endsWith("OurSpeed.class")));
    }
  }

  private static final class Source extends SimpleJavaFileObject {
    private final String code;

    Source(String code) {
      super(URI.create("mem:///" + name(code) + ".java"), Kind.SOURCE);
      this.code = code;
    }

    private static String name(String code) {
      return code.replaceAll("(?s).*public final class (\\w+).*", "org/example/ourclub/$1");
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return code;
    }
  }

  @Test
  void theProjectUsesTheVersionsOfTheSuite() throws Exception {
    String project = guide.blocks("xml").get(0);
    String parent = Files.readString(Path.of("../../pom.xml"));
    for (String property : List.of("bnd.version", "swt.version")) {
      String version = parent.replaceAll("(?s).*<" + property + ">(.*?)</.*", "$1");
      assertTrue(project.contains("<version>" + version + "</version>"), property + " " + version);
    }
    String suite =
        parent.replaceAll(
            "(?s).*?<artifactId>org.fettlebench</artifactId>\\s*<version>(.*?)</.*", "$1");
    assertTrue(project.contains("<fettlebench.version>" + suite + "</"), suite);
  }
}
