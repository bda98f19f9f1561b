package org.fettlebench.command.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.fettlebench.command.internal.Session.Answer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Holds the keys of answers for machines, and the kinds of their values, to those once approved, so
 * that programs written against them go on working. With {@code -Dguide.write=true} they are
 * approved anew.
 */
class ApprovedDataTest {
  private static final Path FILES = Path.of("src/test/resources/guide");
  private static final Path APPROVED = Path.of("src/test/resources/approved");
  private static final Set<String> UNITS =
      Set.of(
          "Mm",
          "In",
          "Mm2",
          "In2",
          "N",
          "Nm",
          "Mpa",
          "Percent",
          "Degrees",
          "PerInch",
          "Count",
          "Rpm",
          "PerMin",
          "Diameters");
  // Numbers that count things or name them, and so have no unit.
  private static final Set<String> COUNTS =
      Set.of(
          "id",
          "lineId",
          "quantity",
          "present",
          "lent",
          "lowMark",
          "line",
          "column",
          "count",
          "threads",
          "needed",
          "scaleOneTo",
          // A part of what breaks the tap, and its flutes.
          "ratio",
          "ratioLeast",
          "ratioMost",
          "flutes",
          "confidence",
          "holes",
          "hole",
          "holesOn",
          "upperNumber",
          "lowerNumber",
          "chance",
          "chanceAsked",
          "standardError",
          "trials",
          "tappedZoneFactor");

  @TempDir static Path folder;
  private static FreshClub club;
  private static Session session;

  @BeforeAll
  static void openTheClub() {
    club = new FreshClub(folder);
    session = new Session(AllCommands.of(club, folder)).in(FILES.toAbsolutePath().toString());
    assertEquals("", session.type("stock", "receive", "--file", "stock.csv").err());
  }

  @AfterAll
  static void closeTheClub() {
    club.close();
  }

  @ParameterizedTest
  @CsvSource({
    "thread-show, thread show 2 BA 1/4 BSF",
    "thread-list, thread list",
    "thread-limits, thread limits M6-6H/6g",
    "thread-strength, thread strength M6 --screw class-8.8 --nut 6082-t6 --preload 5000 --friction 0.15",
    "thread-wires, thread wires 2 BA --wire 0.45mm --over 4.72mm",
    "material-list, material list",
    "thread-identify, thread identify --diameter 5.88mm --pitch 1mm --hexagon 9.9mm",
    "thread-pairs, thread pairs 2 BA",
    "head-show, head show M6",
    "drill-near, drill near 5/32",
    "drill-show, drill show No 22",
    "hole-ream, hole ream 4.2mm --material brass",
    "drill-speed, drill speed No 22 --material brass --machine 480,850,1400",
    "tap-risk, tap risk 2 BA --material EN1A --depth 20mm --through --drill 5/32",
    "head-sink, head sink M6",
    "hole-plan, hole plan 2 BA --percent 65 --depth 5mm --metal 20mm",
    "seat-check, seat check gland.seat.toml",
    "head-scale, head scale 8 BA --scale 1:12",
    "joint-zone, joint zone --fastener 6mm --hole 6.44mm --fixed --passed 8mm --engaged 12mm --actual 6.5mm",
    "joint-edge, joint edge 2 BA --edge 5mm",
    "joint-length, joint length 2 BA --passed 6mm --blind 9mm",
    "casting-place, casting place plate.casting.toml",
    "pattern-chance, pattern chance cover.pattern.toml --trials 2000",
    "pattern-drill, pattern drill cover.pattern.toml --catalogue --trials 2000",
    "pattern-fit, pattern fit flange.pattern.toml",
    "seat-chance, seat chance gland.seat.toml --trials 1000",
    "method-take-in, method take-in errors.csv",
    "method-list, method list --member Ann",
    "method-show, method show coordinate-table",
    "method-measure, method measure jig --x 0.1mm --y 0mm --date 2026-04-04",
    "method-strike, method strike 10 --reason slip",
    "method-errors, method errors --all",
    "hole-pilot, hole pilot 1/4 --method scribe-and-dot",
    "hole-correct, 'hole correct lug.seat.toml --drilled 3mm --at 6.15mm,5.7mm --within 0.05mm'",
    "hole-mark, hole mark lug.seat.toml --turn sideways --depth 12mm",
    "kit-check, kit check pump.kit.toml",
    "error, kit check faulty.kit.toml",
    "stock-list, stock list",
    "stock-take, stock take 1 1 --member Ann --note pump",
    "stock-history, stock history 1",
    "help, stock --help"
  })
  void theKeysAreThoseApproved(String name, String typed) throws IOException {
    Answer answer = session.type((typed + " --json").split(" "));
    Set<String> keys = new TreeSet<>();
    flatten("", JSON.std.mapFrom(answer.out()), keys);
    String told = String.join("\n", keys) + "\n";
    Path file = APPROVED.resolve(name + ".txt");
    if (Boolean.getBoolean("guide.write")) {
      Files.createDirectories(APPROVED);
      Files.writeString(file, told);
    }
    assertEquals(Files.readString(file), told);
  }

  private static void flatten(String where, Object value, Set<String> keys) {
    if (value instanceof Map<?, ?> map) {
      map.forEach((key, inner) -> flatten(where + "/" + key, inner, keys));
    } else if (value instanceof List<?> list) {
      list.forEach(inner -> flatten(where + "[]", inner, keys));
    } else {
      keys.add(where + ": " + kind(where, value));
    }
  }

  private static String kind(String where, Object value) {
    if (value instanceof Number) {
      String key = where.substring(where.lastIndexOf('/') + 1);
      assertTrue(
          UNITS.stream().anyMatch(key::endsWith)
              || key.equals("percentOfThread")
              || COUNTS.contains(key)
              || where.startsWith("/counts/"),
          "a number without its unit in the key: " + where);
      return "number";
    }
    return value instanceof Boolean ? "truth value" : "text";
  }
}
