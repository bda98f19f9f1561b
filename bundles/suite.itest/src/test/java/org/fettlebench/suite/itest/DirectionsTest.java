package org.fettlebench.suite.itest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Holds the directions of docs/architecture.md over the class files of the shipped bundles. */
class DirectionsTest {
  private static final String OURS = "org.fettlebench.";

  /** What the bundles that others stand on may see; all others see any of these. */
  private static final Map<String, Set<String>> MAY_SEE =
      Map.ofEntries(
          Map.entry("measure", Set.of()),
          Map.entry("modules.api", Set.of()),
          Map.entry("store.api", Set.of()),
          Map.entry("tables.api", Set.of("measure")),
          Map.entry("drawing", Set.of("measure")),
          Map.entry("club.api", Set.of("measure")),
          Map.entry("command.api", Set.of("measure")),
          Map.entry("desktop.api", Set.of("measure", "drawing")),
          Map.entry("threads.api", Set.of("measure", "tables.api")),
          Map.entry("tooling.api", Set.of("measure", "tables.api", "threads.api")),
          Map.entry("fasteners.api", Set.of("measure", "tables.api", "threads.api")),
          Map.entry(
              "paper.api",
              Set.of(
                  "measure",
                  "tooling.api",
                  "drawing",
                  "fits.api",
                  "holes.api",
                  "castings.api",
                  "club.api",
                  "kits.api")),
          Map.entry("fits.api", Set.of("measure", "tables.api", "drawing")),
          Map.entry("castings.api", Set.of("measure", "drawing")),
          Map.entry("holes.api", Set.of("measure", "tables.api", "drawing", "fits.api")),
          Map.entry(
              "kits.api",
              Set.of(
                  "measure",
                  "tables.api",
                  "threads.api",
                  "tooling.api",
                  "fasteners.api",
                  "fits.api",
                  "holes.api",
                  "castings.api",
                  "drawing",
                  "club.api")));

  /** Bundles whose arithmetic is pure: they know neither store nor shelf nor window. */
  private static final Set<String> PURE =
      Set.of("tables", "threads", "tooling", "fasteners", "fits", "holes", "castings");

  private static final Set<String> WORLDLY =
      Set.of("club.api", "store.api", "kits.api", "command.api", "desktop.api");

  private static Map<String, String> bundleOfPackage;
  private static Map<String, JavaClasses> classesOfBundle;

  @BeforeAll
  static void readClassFiles() throws IOException {
    bundleOfPackage = new HashMap<>();
    classesOfBundle = new TreeMap<>();
    List<Path> jars = new ArrayList<>(Suite.ownJars());
    jars.add(Suite.sampleJar());
    for (Path path : jars) {
      String bundle = name(path);
      try (JarFile jar = new JarFile(path.toFile())) {
        classesOfBundle.put(bundle, new ClassFileImporter().importJar(jar));
        packages(jar)
            .forEach(
                name -> {
                  String other = bundleOfPackage.put(name, bundle);
                  assertTrue(other == null, name + " is in " + bundle + " and in " + other);
                });
      }
    }
  }

  private static String name(Path jar) {
    return jar.getFileName().toString().substring(OURS.length()).replaceFirst("-\\d.*", "");
  }

  private static Set<String> packages(JarFile jar) {
    Set<String> names = new TreeSet<>();
    jar.stream()
        .map(entry -> entry.getName())
        .filter(entry -> entry.startsWith("org/fettlebench/") && entry.endsWith(".class"))
        .forEach(entry -> names.add(entry.substring(0, entry.lastIndexOf('/')).replace('/', '.')));
    return names;
  }

  /** Returns what a bundle's classes use, as "bundle: class that uses -> class used". */
  private static Map<String, Set<String>> seen(String bundle) {
    Map<String, Set<String>> seen = new TreeMap<>();
    for (JavaClass type : classesOfBundle.get(bundle)) {
      for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
        String target =
            bundleOfPackage.get(
                dependency.getTargetClass().getBaseComponentType().getPackageName());
        if (type.getName().startsWith(OURS) && target != null && !target.equals(bundle)) {
          seen.computeIfAbsent(target, name -> new TreeSet<>())
              .add(type.getName() + " -> " + dependency.getTargetClass().getName());
        }
      }
    }
    return seen;
  }

  private static Stream<String> forbidden(String bundle, Set<String> allowed) {
    return seen(bundle).entrySet().stream()
        .filter(entry -> !allowed.contains(entry.getKey()))
        .map(entry -> bundle + " sees " + entry.getKey() + ": " + entry.getValue());
  }

  @Test
  void nobodySeesMoreThanTheDirectionsAllow() {
    assertTrue(classesOfBundle.size() > 30, classesOfBundle.keySet().toString());
    List<String> wrong = new ArrayList<>();
    for (String bundle : classesOfBundle.keySet()) {
      forbidden(bundle, allowed(bundle)).forEach(wrong::add);
    }
    assertEquals(List.of(), wrong);
  }

  private static Set<String> allowed(String bundle) {
    Set<String> allowed = new TreeSet<>(MAY_SEE.getOrDefault(bundle, MAY_SEE.keySet()));
    if (bundle.startsWith("desktop") && !bundle.equals("desktop.api")) {
      allowed.add("desktop.widgets");
    }
    if (bundle.equals("launcher")) {
      allowed.clear();
    }
    return allowed;
  }

  @Test
  void arithmeticKnowsNeitherStoreNorWindow() {
    List<String> wrong = new ArrayList<>();
    for (String bundle : PURE) {
      seen(bundle)
          .forEach(
              (other, uses) -> {
                if (WORLDLY.contains(other)) {
                  wrong.add(bundle + " sees " + other + ": " + uses);
                }
              });
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void onlyTheDesktopKnowsWidgetsAndOnlyTheStoreKnowsSql() {
    List<String> wrong = new ArrayList<>();
    classesOfBundle.forEach(
        (bundle, classes) -> {
          boolean window = bundle.startsWith("desktop") || bundle.equals("launcher");
          uses(classes, "org.eclipse.swt")
              .filter(use -> !window)
              .filter(use -> !bundle.startsWith("sample"))
              .forEach(wrong::add);
          boolean store = bundle.startsWith("store") || bundle.equals("club.store");
          uses(classes, "java.sql").filter(use -> !store).forEach(wrong::add);
        });
    assertEquals(List.of(), wrong);
  }

  private static Stream<String> uses(JavaClasses classes, String prefix) {
    return classes.stream()
        .filter(type -> type.getName().startsWith(OURS))
        .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
        .filter(use -> use.getTargetClass().getBaseComponentType().getName().startsWith(prefix))
        .map(use -> use.getOriginClass().getName() + " -> " + use.getTargetClass().getName());
  }

  @Test
  void aProvidersClassesAreInternal() {
    List<String> wrong = new ArrayList<>();
    for (String bundle :
        List.of(
            "tables",
            "threads",
            "tooling",
            "fasteners",
            "fits",
            "holes",
            "castings",
            "kits",
            "club.store",
            "store.derby",
            "modules",
            "command",
            "desktop",
            "desktop.kits",
            "desktop.seats",
            "desktop.castings",
            "desktop.stock",
            "desktop.threads",
            "desktop.modules")) {
      bundleOfPackage.forEach(
          (name, owner) -> {
            if (owner.equals(bundle) && !name.contains(".internal")) {
              wrong.add(bundle + " has " + name);
            }
          });
    }
    assertEquals(List.of(), wrong);
  }
}
