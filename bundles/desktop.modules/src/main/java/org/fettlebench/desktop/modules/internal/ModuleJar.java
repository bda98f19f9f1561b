package org.fettlebench.desktop.modules.internal;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.zip.ZipException;

/**
 * A jar that may be added as a module, and what it says of itself.
 *
 * @param file where it lies
 * @param symbolicName unique name
 * @param title name for people
 * @param description one sentence, empty if it says none
 * @param vendor who made it, empty if it does not say
 * @param version its version
 */
record ModuleJar(
    Path file,
    String symbolicName,
    String title,
    String description,
    String vendor,
    String version) {

  /**
   * Reads what a jar says of itself.
   *
   * @throws IOException if it is no module; the message names the file and what is amiss
   */
  static ModuleJar read(Path file) throws IOException {
    try (JarFile jar = new JarFile(file.toFile())) {
      Attributes headers =
          Optional.ofNullable(jar.getManifest()).orElseGet(Manifest::new).getMainAttributes();
      String name = text(headers, "Bundle-SymbolicName").split(";")[0].strip();
      if (name.isEmpty()) {
        throw new IOException(
            file
                + " is no module: its manifest has no Bundle-SymbolicName line. Ask its maker for"
                + " a module made for this suite");
      }
      String title = text(headers, "Bundle-Name");
      return new ModuleJar(
          file,
          name,
          title.isEmpty() ? name : title,
          text(headers, "Bundle-Description"),
          text(headers, "Bundle-Vendor"),
          text(headers, "Bundle-Version"));
    } catch (ZipException broken) {
      throw new IOException(file + " is no jar, or is damaged: " + broken.getMessage(), broken);
    }
  }

  private static String text(Attributes headers, String key) {
    return Optional.ofNullable(headers.getValue(key)).orElse("").strip();
  }

  /**
   * Copies it into the modules folder, whole before it gets its name, so that the watch over the
   * folder never sees half of it. A jar of the same file name is replaced.
   */
  Path copyInto(Path folder) throws IOException {
    Files.createDirectories(folder);
    Path target = folder.resolve(file.getFileName());
    if (Files.exists(target) && Files.isSameFile(target, file)) {
      return target;
    }
    Path partial = folder.resolve(file.getFileName() + ".part");
    Files.copy(file, partial, StandardCopyOption.REPLACE_EXISTING);
    try {
      Files.move(
          partial, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException plain) {
      Files.move(partial, target, StandardCopyOption.REPLACE_EXISTING);
    }
    return target;
  }

  /** Returns what a person must know before letting it in. */
  String warning() {
    return title
        + (version.isEmpty() ? "" : ", version " + version)
        + ", made by "
        + (vendor.isEmpty() ? "somebody it does not name" : vendor)
        + (description.isEmpty() ? "." : ":\n" + description)
        + "\n\nA module runs inside the suite with all your rights on this computer: it can read"
        + " and change the club's stock and kits, and any file you can. Nothing holds it back, and"
        + " what it says of itself is not checked. Let in only what comes from a maker you trust."
        + "\n\nIt is copied into the modules folder and starts at once. It can be left out again"
        + " on this page at any time.\n\nLet it in?";
  }
}
