package org.fettlebench.store.derby.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.fettlebench.store.StoreException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs, one store. */
class StoreLockTest {
  @TempDir Path data;

  @Test
  void aStoreHeldByAnotherProgramIsRefusedAndFreeOnceThatOneIsGone() throws Exception {
    Process other =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Holder.class.getName(),
                data.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data);
        BufferedReader said = reader(other)) {
      assertEquals("holding", said.readLine());
      String refusal = assertThrows(StoreException.class, engine::dataSource).getMessage();
      assertTrue(refusal.contains(data.resolve("store").toString()), refusal);
      assertTrue(refusal.contains("in use by another program; close the suite"), refusal);
      other.destroyForcibly().waitFor();
      engine.dataSource();
    } finally {
      other.destroyForcibly();
    }
  }

  private static BufferedReader reader(Process process) {
    return new BufferedReader(
        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
  }

  /** The other program: holds the store until it is killed. */
  static final class Holder {
    public static void main(String[] args) throws IOException {
      try (DerbyStoreEngine engine = new DerbyStoreEngine(Path.of(args[0]))) {
        engine.dataSource();
        System.out.println("holding");
        System.in.read();
      }
    }
  }
}
