package org.fettlebench.kits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.fettlebench.kits.CastingFile;
import org.fettlebench.kits.FaultyFileException;
import org.fettlebench.measure.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CastingFileTest {
  private static final String PLATE =
      """
      [casting]
      name = "plate"
      unit = "mm"
      cut = 0.5
      uncertainty = 0.1

      [[face]]
      name = "foot"
      towards = "down"
      finished = 0
      measured = "-1/16"

      [[face]]
      name = "top"
      towards = "up"
      finished = "1 in"
      spots = [[0, 0, 26.2], [40, 0, 26.6]]
      cut = 1
      """;

  private static final String BORE =
      """
      [[bore]]
      name = "main"
      along = "y"
      centre = [9, 4]
      finished = 12
      rough = [{ centre = [9.2, 0, 4.1], diameter = 9.5 }, { centre = [9, 4], diameter = 0 }]
      """;

  private static CastingFile read(String text) {
    return Bench.FILES.readCasting("a", text);
  }

  private static List<String> faults(String text) {
    return assertThrows(FaultyFileException.class, () -> read(text)).faults().stream()
        .map(fault -> fault.line() + ":" + fault.column() + " " + fault.wrong())
        .toList();
  }

  @Test
  void facesAreRead() {
    CastingFile file = read(PLATE);
    FlatFace foot = (FlatFace) file.casting().features().get(0);
    FlatFace top = (FlatFace) file.casting().features().get(1);
    assertEquals(Towards.DOWN, foot.towards());
    assertEquals(List.of(new Spot(0, 0, -1.5875)), foot.rough());
    assertEquals(0.5, foot.leastCutMm());
    assertEquals(0.1, foot.uncertaintyMm());
    assertEquals(25.4, top.finishedMm());
    assertEquals(1, top.leastCutMm());
    assertEquals(new Spot(40, 0, 26.6), top.rough().get(1));
    assertEquals(Set.of(Axis.Z), file.casting().freedom().shifts(), "held from both sides");
    assertEquals(Set.of(), file.casting().freedom().turns());
  }

  @Test
  void aRoundOneMayLeaveItsOwnAxisOut() {
    CastingFile file = read(PLATE + BORE);
    RoundFace bore = (RoundFace) file.casting().features().get(2);
    assertEquals(RoundFace.Kind.BORE, bore.kind());
    assertEquals(new Spot(9, 0, 4), bore.finishedCentre());
    assertEquals(new Spot(9.2, 0, 4.1), bore.rough().get(0).centre());
    assertEquals(new Spot(9, 0, 4), bore.rough().get(1).centre());
    assertEquals(Set.of(Axis.X, Axis.Z), file.casting().freedom().shifts());
  }

  @ParameterizedTest
  @EnumSource
  void whatIsWrittenReadsBackAsTheSame(LengthUnit unit) {
    String said =
        (PLATE + BORE + BORE.replace("bore", "boss").replace("main", "hub \\\"A\\\""))
            .replace(
                "cut = 0.5",
                "cut = 0.5\nholds-pressure = true\nturn = [\"x\", \"y\"]\nlargest-turn-degrees = 1.5")
            .replace("measured = \"-1/16\"", "spots = [[0, 1, -1.5875]]");
    for (String text : List.of(PLATE, said)) {
      CastingFile file = read(text);
      assertEquals(file, read(Bench.FILES.writeCasting(file, unit)));
    }
  }

  @Test
  void everyFaultIsTold() {
    assertEquals(
        List.of("3:1 is no unit of length here"),
        faults(PLATE.replace("unit = \"mm\"", "unit = \"furlong\"")));
    assertEquals(
        List.of(
            "4:1 cut has no unit",
            "5:1 uncertainty has no unit",
            "10:1 finished has no unit",
            "17:11 x has no unit",
            "17:14 y has no unit",
            "17:17 z has no unit",
            "17:25 x has no unit",
            "17:29 y has no unit",
            "17:32 z has no unit",
            "18:1 cut has no unit"),
        faults(PLATE.replace("unit = \"mm\"", "# no unit")));
    assertEquals(
        List.of("9:1 is no way to look", "15:1 is no key that face \"top\" has"),
        faults(PLATE.replace("\"down\"", "\"below\"").replace("towards = \"up\"", "towrds = 3"))
            .stream()
            .filter(fault -> !fault.contains("has no towards"))
            .toList());
    assertEquals(
        List.of("14:1 is the name of another one already"),
        faults(PLATE.replace("\"top\"", "\"foot\"")));
    assertTrue(
        faults(PLATE.replace("cut = 0.5\n", "")).get(0).endsWith("face \"foot\" has no cut"));
    assertEquals(
        List.of("7:1 face \"foot\" has no uncertainty", "13:1 face \"top\" has no uncertainty"),
        faults(PLATE.replace("uncertainty = 0.1", "# none")).stream().toList());
    assertEquals(
        List.of("4:1 cut must not be below 0 mm"),
        faults(PLATE.replace("cut = 0.5", "cut = -0.5")));
    assertEquals(
        List.of("11:1 stands beside spots"),
        faults(PLATE.replace("measured = \"-1/16\"", "measured = 2\nspots = [[0, 0, 1]]")));
  }

  @Test
  void spotsMustBeThreeLengthsAndThere() {
    assertEquals(List.of("17:10 is no spot"), faults(PLATE.replace("[0, 0, 26.2]", "[0, 26.2]")));
    assertEquals(
        List.of("17:1 has no spot"), faults(PLATE.replace("[[0, 0, 26.2], [40, 0, 26.6]]", "[]")));
    assertEquals(
        List.of("17:1 is no list of spots"),
        faults(PLATE.replace("[[0, 0, 26.2], [40, 0, 26.6]]", "3")));
    assertTrue(faults(PLATE.replace("measured = \"-1/16\"\n", "")).get(0).contains("has no spots"));
  }

  @Test
  void aTurnNeedsItsLimitAndPlacesOnTheFaces() {
    String turning = PLATE.replace("unit = \"mm\"", "unit = \"mm\"\nturn = [\"x\"]");
    List<String> faults = faults(turning);
    assertTrue(faults.get(0).contains("has no largest-turn-degrees"), faults.toString());
    assertTrue(faults.get(1).contains("does not say where on the face"), faults.toString());
    assertTrue(
        faults(PLATE.replace("cut = 0.5", "cut = 0.5\nturn = [\"w\"]")).get(0).contains("no axis"));
  }

  @Test
  void roundOnesMustBeWhole() {
    assertTrue(faults(PLATE + BORE.replace("\"y\"", "\"up\"")).get(0).contains("is no axis"));
    assertTrue(
        faults(PLATE + BORE.replace("finished = 12", "finished = 0"))
            .get(0)
            .contains("must be above 0 mm"));
    assertTrue(
        faults(PLATE + BORE.replace("diameter = 9.5", "diameter = -9.5"))
            .get(0)
            .contains("must not be below"));
    assertTrue(
        faults(PLATE + BORE.replaceFirst("rough = .*", "rough = []"))
            .get(0)
            .contains("has no place"));
  }

  @Test
  void aFileOfNothingSaysWhatIsMissing() {
    assertTrue(faults("# none").toString().contains("has no casting"), faults("# none").toString());
    assertEquals(
        List.of("1:1 the file has no [[face]], [[bore]] or [[boss]]"),
        faults("[casting]\nname = \"a\""));
    assertEquals(
        List.of("1:2 no two faces look opposite ways, so nothing holds the part along any axis"),
        faults(PLATE.substring(0, PLATE.indexOf("[[face]]\nname = \"top\""))).stream()
            .map(fault -> fault.replaceFirst("^1:\\d", "1:2"))
            .toList());
  }
}
