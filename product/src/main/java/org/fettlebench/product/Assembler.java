package org.fettlebench.product;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Puts the suite together from the features and the jars that the build has made. */
public final class Assembler {
  private static final String SWT = "org.eclipse.swt.";

  private final Path root;
  private final Path work;
  private final List<Part> parts;

  private Assembler(Path root, Path work) throws IOException {
    this.root = root;
    this.work = work;
    this.parts = FeatureFiles.read(work.resolve("features"));
  }

  /**
   * Assembles {@code fettlebench/} in the build directory.
   *
   * @param args the project's root and the product's build directory, which holds {@code features/}
   *     with versions filled in and {@code parts/} with the jars
   */
  public static void main(String[] args) throws IOException {
    new Assembler(Path.of(args[0]), Path.of(args[1])).assemble();
  }

  private void assemble() throws IOException {
    new PartsCheck(parts, Reactor.bundles(root.resolve("pom.xml")), jars()).check();
    // Made beside the old one, so that a suite that still runs from it is not torn apart.
    Path fresh = work.resolve("fettlebench.new");
    remove(fresh);
    copyJars(fresh);
    writeLists(fresh);
    writeFrameworkProperties(fresh);
    copyTree(root.resolve("product/src/dist"), fresh);
    Path old = work.resolve("fettlebench.old");
    Path suite = work.resolve("fettlebench");
    remove(old);
    if (Files.exists(suite)) {
      Files.move(suite, old);
    }
    Files.move(fresh, suite);
    remove(old);
  }

  private Set<String> jars() throws IOException {
    Set<String> names = new HashSet<>();
    try (DirectoryStream<Path> found = Files.newDirectoryStream(work.resolve("parts"), "*.jar")) {
      found.forEach(jar -> names.add(jar.getFileName().toString()));
    }
    return names;
  }

  private void copyJars(Path fresh) throws IOException {
    Path bundles = Files.createDirectories(fresh.resolve("bundles"));
    Path lib = Files.createDirectories(fresh.resolve("lib"));
    for (Part part : parts) {
      Path from = work.resolve("parts").resolve(part.file());
      Path to = (part.startLevel().isPresent() ? bundles : lib).resolve(part.file());
      if (part.artifact().startsWith(SWT)) {
        UnsignedJar.copy(from, to);
      } else {
        Files.copy(from, to);
      }
    }
  }

  private void writeLists(Path fresh) throws IOException {
    Map<String, List<String>> lists = new TreeMap<>();
    for (Part part : parts) {
      part.startLevel()
          .ifPresent(
              level ->
                  lists
                      .computeIfAbsent(part.feature(), name -> new ArrayList<>())
                      .add(level + " " + part.file()));
    }
    Path features = Files.createDirectories(fresh.resolve("features"));
    for (Map.Entry<String, List<String>> list : lists.entrySet()) {
      Files.write(features.resolve(list.getKey() + ".list"), list.getValue());
    }
  }

  private void writeFrameworkProperties(Path fresh) throws IOException {
    List<String> packages = new ArrayList<>();
    for (Part part : parts) {
      if (part.artifact().startsWith(SWT) || part.artifact().equals("slf4j-api")) {
        packages.addAll(SystemPackages.of(work.resolve("parts").resolve(part.file())));
      }
    }
    Files.writeString(
        Files.createDirectories(fresh.resolve("conf")).resolve("framework.properties"),
        "org.osgi.framework.system.packages.extra="
            + String.join(",\\\n    ", packages)
            + "\nds.cache.metadata=true\n");
  }

  private static void copyTree(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path target = to.resolve(from.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.copy(file, target, java.nio.file.StandardCopyOption.COPY_ATTRIBUTES);
      }
    }
  }

  private static void remove(Path directory) throws IOException {
    if (Files.exists(directory)) {
      try (Stream<Path> files = Files.walk(directory)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }
}
