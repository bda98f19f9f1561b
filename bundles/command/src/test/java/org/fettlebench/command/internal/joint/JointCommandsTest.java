package org.fettlebench.command.internal.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.fettlebench.command.internal.AllCommands;
import org.fettlebench.command.internal.FreshClub;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JointCommandsTest {
  @TempDir Path folder;
  private FreshClub club;
  private Session session;

  @BeforeEach
  void open() {
    club = new FreshClub(folder);
    session = new Session(AllCommands.of(club, folder)).in(folder.toString());
  }

  @AfterEach
  void close() {
    club.close();
  }

  private List<?> zones(String typed) throws IOException {
    return (List<?>) JSON.std.mapFrom(session.type(typed.split(" ")).out()).get("zones");
  }

  private static double zone(Object zone) {
    return ((Number) ((Map<?, ?>) zone).get("zoneDiameterMm")).doubleValue();
  }

  /** By ASME Y14.5's appendix; the last by hand: 1 + 2 x 8 / 12 = 2.3333, 0.44 / 3.3333. */
  @ParameterizedTest
  @CsvSource({
    "joint zone --fastener 6mm --hole 6.44mm, 0.44",
    "joint zone --fastener M6 --hole 6.44mm --fixed, 0.22",
    "joint zone --fastener 6mm --hole 6.44mm --fixed --passed 8mm --engaged 12mm, 0.132"
  })
  void tellsTheZone(String typed, double diameter) throws IOException {
    Object zone = zones(typed + " --json").get(0);
    assertEquals(diameter, zone(zone), 1e-6);
    assertEquals(
        diameter / 2, ((Number) ((Map<?, ?>) zone).get("errorRadiusMm")).doubleValue(), 1e-6);
  }

  @Test
  void unequalZonesAndTheBonusFollow() throws IOException {
    List<?> zones =
        zones("joint zone --fastener 6mm --hole 6.44mm --fixed --tapped-zone 0.1mm --json");
    assertEquals(0.1, zone(zones.get(0)), 1e-9);
    assertEquals(0.34, zone(zones.get(1)), 1e-9);
    List<?> other =
        zones("joint zone --fastener 6mm --hole 6.44mm --fixed --clearance-zone 0.34mm --json");
    assertEquals(0.1, zone(other.get(1)), 1e-9);
    List<?> bonus =
        zones(
            "joint zone --fastener 10mm --hole 10.5mm --actual 10.7mm --out-of-square 0.05mm"
                + " --json");
    assertEquals(0.65, zone(bonus.get(1)), 1e-9);
  }

  @Test
  void theHoleFollowsFromTheZones() throws IOException {
    Map<String, Object> data =
        JSON.std.mapFrom(
            session
                .type(
                    ("joint zone --fastener 6mm --fixed --tapped-zone 0.22mm --clearance-zone"
                            + " 0.22mm --head 10mm --json")
                        .split(" "))
                .out());
    List<?> sizes = (List<?>) data.get("sizes");
    assertEquals(6.44, ((Number) ((Map<?, ?>) sizes.get(0)).get("sizeMm")).doubleValue(), 1e-9);
    assertEquals(8.0, ((Number) ((Map<?, ?>) sizes.get(1)).get("sizeMm")).doubleValue(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "joint zone --fastener 6mm --hole 5.9mm, 1, does not go",
    "joint edge 2 BA --edge 4mm, 1, TOO NEAR",
    "joint edge 2 BA --edge 40mm --end 40mm --pitch 40mm, 0, met",
    "joint length 2 BA --passed 4mm --blind 9mm --screw 20mm, 1, bottoms: shorten by 7.00 mm",
    "joint length 2 BA --passed 4mm --through 9mm --screw 20mm, 0, good",
    "joint length 2 BA --passed 4mm --blind 2mm --screw 6mm, 1, only 0.4 diameters deep",
    "joint length 2 BA --passed 4mm --through 9mm --screw 3mm, 1, does not hold",
    "joint length M6 --passed 4mm --nut --screw 6mm, 1, shallow",
    "joint length 2 BA --passed 4mm --blind 9mm, 1, no such screw is held",
    "head scale 8 BA --scale 12 --full 1BSW, 0, 8 BA hexagon",
    "head scale 8 BA --scale 1:12 --style large-hexagon, 0, large hexagon",
    // ISO 4014: M24 has 36 mm across flats, M3 5.5 mm; 36 / 8 = 4.5, 5.5 / 4.5 = 1.222.
    "head scale M3 --scale 1:8 --full M24, 0, +22.2 %"
  })
  void answers(String typed, int status, String said) {
    Answer answer = session.type(typed.split(" "));
    assertEquals("", answer.err());
    assertEquals(status, answer.status(), answer.out());
    assertTrue(answer.out().contains(said), answer.out());
  }

  @ParameterizedTest
  @CsvSource({
    "joint zone --hole 6mm, say --fastener",
    "joint zone --fastener M666 --hole 6mm, no thread series has",
    "joint zone --fastener 6mm, say --hole",
    "joint zone --fastener 6mm --hole 0mm, clearance hole 0.0 mm is outside",
    "joint zone --fastener 6mm --hole 7mm --passed 3mm, needs --fixed",
    "joint zone --fastener 6mm --hole 7mm --fixed --passed 3mm, --engaged together",
    "joint length 2 BA --blind 9mm, say --passed",
    "joint length 2 BA --passed 4mm, say one of --blind",
    "joint length 2 BA --passed -4mm --blind 9mm, is below 0 mm",
    "joint edge 2 BA --edge -5mm, --edge -5 mm is below 0 mm",
    "joint edge 99 XX, no thread series has",
    "head scale 8 BA, say --scale",
    "head scale 8 BA --scale 0, is outside",
    "head scale 8 BA --scale huge, is no scale",
    "head scale 8 BA --scale 12 --series ZZ, there is no series",
    "head scale 8 BA --scale 12 --full 1BSW --series BSF, not both",
    "head scale M10 --scale 1:50, the nearest hexagon listed for it is 2 BSW",
    "head scale M1 --scale 1, Say --full or another --series",
    "head scale 8 BA --scale 12 --style round, no table has"
  })
  void refusesInWords(String typed, String said) {
    Answer answer = session.type(typed.split(" "));
    assertEquals(2, answer.status(), answer.out());
    assertTrue(answer.err().contains(said), answer.err());
    assertEquals(List.of(), session.reported());
  }
}
