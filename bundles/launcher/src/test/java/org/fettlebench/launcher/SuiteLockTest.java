package org.fettlebench.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class SuiteLockTest {
  @TempDir Path dir;

  @Test
  void isHeldOnceAndTellsByWhom() {
    Path file = dir.resolve("suite.lock");
    SuiteLock lock = SuiteLock.take(file, SuiteLock.DESKTOP).orElseThrow();
    assertTrue(SuiteLock.take(file, SuiteLock.COMMAND).isEmpty());
    SuiteLock.Holder expected =
        new SuiteLock.Holder(ProcessHandle.current().pid(), SuiteLock.DESKTOP);
    assertEquals(Optional.of(expected), SuiteLock.holder(file));
    lock.close();
    assertEquals(Optional.empty(), SuiteLock.holder(file));
    SuiteLock.take(file, SuiteLock.COMMAND).orElseThrow().close();
  }

  @Test
  void isGivenBackWhenTheWorkFails() {
    Path file = dir.resolve("suite.lock");
    SuiteLock lock = SuiteLock.take(file, SuiteLock.COMMAND).orElseThrow();
    try {
      lock.during(
          () -> {
            throw new IllegalStateException("work failed");
          });
    } catch (IllegalStateException e) {
      assertEquals("work failed", e.getMessage());
    }
    SuiteLock.take(file, SuiteLock.COMMAND).orElseThrow().close();
  }

  @Test
  @Timeout(30)
  void theHeldOneOfAnotherProcessIsFreeOnceThatIsKilled() throws Exception {
    Path file = dir.resolve("suite.lock");
    Process other = Processes.java(SuiteLockTest.class, file.toString());
    assertEquals("held", other.inputReader().readLine());
    assertTrue(SuiteLock.take(file, SuiteLock.COMMAND).isEmpty());
    assertEquals(other.pid(), SuiteLock.holder(file).orElseThrow().process());
    other.destroyForcibly().waitFor();
    SuiteLock.take(file, SuiteLock.COMMAND).orElseThrow().close();
  }

  /** Holds the lock in a process of its own until its input ends. */
  public static void main(String[] args) {
    SuiteLock.take(Path.of(args[0]), SuiteLock.DESKTOP)
        .orElseThrow()
        .during(
            () -> {
              System.out.println("held");
              try {
                return System.in.read();
              } catch (IOException e) {
                return 1;
              }
            });
  }
}
