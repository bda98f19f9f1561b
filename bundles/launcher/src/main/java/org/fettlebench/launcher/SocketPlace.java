package org.fettlebench.launcher;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Where the suite's socket lies: in the data directory's private folder, or, where that path is too
 * long for a socket, in a private temporary folder whose name is left in the data directory.
 */
final class SocketPlace {
  // sun_path holds 104 bytes on macOS and 108 on Linux, the closing zero included (unix(4),
  // unix(7)).
  private static final int LONGEST_PATH = 100;

  private final Path run;

  SocketPlace(DataDirectory data) {
    this.run = data.run();
  }

  /** Returns a path to bind, with whatever an earlier suite left there removed. */
  Path make() throws IOException {
    Path usual = run.resolve("socket");
    Files.deleteIfExists(usual);
    Files.deleteIfExists(elsewhere());
    if (usual.toString().getBytes(StandardCharsets.UTF_8).length <= LONGEST_PATH) {
      return usual;
    }
    // A temporary directory is made with rights for its owner only.
    Path path = Files.createTempDirectory("fettlebench").resolve("socket");
    Files.writeString(elsewhere(), path.toString());
    return path;
  }

  /** Returns the path to call. */
  Path find() throws IOException {
    return Files.exists(elsewhere())
        ? Path.of(Files.readString(elsewhere()).strip())
        : run.resolve("socket");
  }

  /** Removes what {@link #make} made. */
  void remove(Path made) throws IOException {
    Files.deleteIfExists(made);
    if (!made.startsWith(run)) {
      Files.deleteIfExists(made.getParent());
      Files.deleteIfExists(elsewhere());
    }
  }

  private Path elsewhere() {
    return run.resolve("socket-path");
  }
}
