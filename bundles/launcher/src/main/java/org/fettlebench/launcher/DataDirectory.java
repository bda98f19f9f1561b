package org.fettlebench.launcher;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;

/**
 * The directory that holds everything of one club: database, log, modules, caches.
 *
 * @param path absolute
 */
record DataDirectory(Path path) {
  private static final FileAttribute<?>[] OWNER_ONLY =
      FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
          ? new FileAttribute<?>[] {
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"))
          }
          : new FileAttribute<?>[0];

  /**
   * Finds the directory: the one asked for, or the platform's place for application data.
   *
   * @param asked directory from the command line, taken from the current directory
   * @param name last part of the standard place: {@code club}, or {@code demo} for the demo
   */
  static DataDirectory find(Optional<String> asked, String name, Surroundings here) {
    try {
      return new DataDirectory(
          asked
              .map(Path::of)
              .orElseGet(() -> applicationData(here).resolve("fettlebench").resolve(name))
              .toAbsolutePath()
              .normalize());
    } catch (InvalidPathException e) {
      throw new LaunchException(
          "--data " + asked.orElse("") + " is not a directory name here: " + e.getReason(), e);
    }
  }

  /** The XDG base directory specification, and the habits of Windows and macOS. */
  private static Path applicationData(Surroundings here) {
    if (here.windows()) {
      String roaming = here.variable("APPDATA");
      return roaming.isEmpty() ? here.home().resolve("AppData/Roaming") : Path.of(roaming);
    }
    if (here.mac()) {
      return here.home().resolve("Library/Application Support");
    }
    // The specification says that a relative path is to be ignored.
    String xdg = here.variable("XDG_DATA_HOME");
    return xdg.startsWith("/") ? Path.of(xdg) : here.home().resolve(".local/share");
  }

  /**
   * Makes the directory, readable by its owner only, if it is not there.
   *
   * @throws LaunchException when it cannot be made or written
   */
  void make() {
    makePrivate(path);
    if (!Files.isWritable(path)) {
      throw new LaunchException(
          "The data directory " + path + " cannot be written. Give another with --data DIR.");
    }
  }

  Path log() {
    return makePrivate(path.resolve("log")).resolve("fettlebench.log");
  }

  Path cache() {
    return path.resolve("cache");
  }

  Path lock() {
    return path.resolve("suite.lock");
  }

  Path modules() {
    return makePrivate(path.resolve("modules"));
  }

  /** Returns the directory of the socket, which nobody but the owner can enter. */
  Path run() {
    return makePrivate(path.resolve("run"));
  }

  private static Path makePrivate(Path directory) {
    try {
      return Files.createDirectories(directory, OWNER_ONLY);
    } catch (IOException e) {
      throw new LaunchException(
          "The directory " + directory + " cannot be made (" + e + "). Give another with --data.",
          e);
    }
  }
}
