package org.fettlebench.kits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.fettlebench.kits.FaultyFileException;
import org.fettlebench.kits.Kit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each file in {@code faulty} says in its last lines, behind {@code #!}, what must be said of it.
 */
class FaultyKitFilesTest {
  static Stream<Path> files() throws IOException, URISyntaxException {
    return Files.list(Path.of(FaultyKitFilesTest.class.getResource("/faulty").toURI())).sorted();
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyFaultIsToldWithItsPlace(Path file) {
    String name = file.getFileName().toString();
    String text = Bench.FILES.text(file);
    List<String> expected =
        text.lines().filter(line -> line.startsWith("#! ")).map(line -> line.substring(3)).toList();

    FaultyFileException refused =
        assertThrows(FaultyFileException.class, () -> Bench.FILES.readKit(name, text));

    List<String> said =
        refused.faults().stream()
            .map(fault -> fault.toString().substring(name.length() + 1))
            .toList();
    assertEquals(String.join("\n", expected), String.join("\n", said));
    assertTrue(!expected.isEmpty(), "the file must say what is expected");
  }

  @Test
  void emptyTextIsRefused() {
    assertEquals(
        "a.kit.toml:1:1: the file is empty. Write it as the page on file formats shows",
        refusal(" \n\n"));
  }

  @Test
  void binaryIsRefusedWithItsPlace() {
    assertTrue(refusal("[kit]\nname\0 = 1").startsWith("a.kit.toml:2:5: \"byte 00\" is not text"));
  }

  @Test
  void hugeTextIsRefused() {
    assertTrue(
        refusal("#".repeat(TextCheck.LARGEST + 1)).contains("more than the 4000000 allowed"));
  }

  @Test
  void listsWithoutEndAreRefused() {
    assertTrue(refusal("[kit]\nname = " + "[".repeat(100_000)).startsWith("a.kit.toml:"));
  }

  @Test
  void whatIsNotUtf8IsRefusedWithItsPlace(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("a.kit.toml");
    Files.write(file, "[kit]\nname = \"½\"".getBytes(StandardCharsets.ISO_8859_1));
    FaultyFileException refused =
        assertThrows(FaultyFileException.class, () -> Bench.FILES.text(file));
    assertTrue(
        refused.getMessage().startsWith("a.kit.toml:2:9: \"byte BD\" is not UTF-8 text."),
        refused.getMessage());
  }

  @Test
  void aMissingFileIsRefused(@TempDir Path folder) {
    Path file = folder.resolve("b.kit.toml");
    FaultyFileException refused =
        assertThrows(FaultyFileException.class, () -> Bench.FILES.text(file));
    assertTrue(refused.getMessage().contains("is no file that is there"), refused.getMessage());
  }

  @Test
  void aFolderIsRefused(@TempDir Path folder) {
    FaultyFileException refused =
        assertThrows(FaultyFileException.class, () -> Bench.FILES.text(folder));
    assertTrue(refused.getMessage().endsWith("is a folder. Name a file in it"));
  }

  @Test
  void aSeatThatNoJointUsesIsToldWithTheCautions() {
    Kit kit =
        Bench.FILES.readKit(
            "a.kit.toml",
            """
            [kit]
            name = "Trial"
            [[seat]]
            name = "spare pad"
            outline = [["0 mm", "0 mm"], ["9 mm", "0 mm"], ["9 mm", "9 mm"]]
            centre = ["6 mm", "3 mm"]
            [[joint]]
            name = "gland"
            count = 2
            fastener = "2 BA hexagon x 1/2 in steel"
            clearance = { fit = "medium", drilled = "No 10" }
            """);
    assertEquals(List.of("spare pad"), kit.idleSeats());
    assertEquals(
        "No joint uses the seat \"spare pad\": it is not checked.",
        Cautions.of(kit).get(0).sentence());
    // No 10 is 0.1935 in (ANSI B94.11M).
    assertEquals(
        "0.1935 in",
        kit.joints().get(0).clearance().orElseThrow().drilled().orElseThrow().inches() + " in");
  }

  @Test
  void aByteOrderMarkDoesNoHarm() {
    String kit =
        """
        [kit]
        name = "Trial"
        [[joint]]
        name = "gland"
        count = 2
        fastener = "2 BA hexagon x 1/2 in steel"
        clearance = { fit = "medium" }
        """;
    assertEquals("Trial", Bench.FILES.readKit("a.kit.toml", "\uFEFF" + kit).name());
  }

  private static String refusal(String text) {
    return assertThrows(FaultyFileException.class, () -> Bench.FILES.readKit("a.kit.toml", text))
        .getMessage();
  }
}
