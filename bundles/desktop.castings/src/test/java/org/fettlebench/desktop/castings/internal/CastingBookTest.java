package org.fettlebench.desktop.castings.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.Placing;
import org.fettlebench.kits.CastingFile;
import org.fettlebench.measure.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is typed becomes a casting, or says what is missing or wrong. */
class CastingBookTest {
  private static Entry mm(String typed) {
    return Entry.read(typed, LengthUnit.MILLIMETRE);
  }

  private static FaceRow face(Looks looks, String finished, String measured) {
    FaceRow row = FaceRow.blank(looks).finished(mm(finished));
    return row.reading(0, row.measuredColumn(), mm(measured));
  }

  private static Sketch sketch(FaceRow... rows) {
    return Sketch.EMPTY.rows(List.of(rows)).cut(mm("0.5")).mayBeOut(mm("0.1"));
  }

  private static Reply ask(Sketch sketch) {
    return RealPage.book().ask(sketch);
  }

  /** 14 rough, 12 finished: 1 off each side, of which 0.5 is the cut and 0.1 may be out. */
  @Test
  void aPlateOfTwoSizesIsAnswered() {
    Reply reply = ask(sketch(face(Looks.DOWN, "0", "0"), face(Looks.UP, "12", "14")));
    Placing placing = reply.answer().orElseThrow();
    assertEquals(0.4, placing.spareMm(), 1e-6);
    assertEquals(Set.of(Axis.Z), placing.casting().freedom().shifts());
    assertEquals(1, reply.coming(1).orElseThrow().leastMm(), 1e-6);
    assertTrue(reply.coming(2).isEmpty());
  }

  /** Each word that is no length, wherever it stands, is named with its place. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "down, on the drawing|finished",
        "down, measured z|measured",
        "down, least cut|cut",
        "down, may be out|out",
      })
  void whatIsNoLengthIsNamedWithItsPlace(String place, String field) {
    FaceRow down = face(Looks.DOWN, "0", "0");
    Entry bad = mm("4o");
    FaceRow wrong =
        switch (field) {
          case "finished" -> down.finished(bad);
          case "measured" -> down.reading(0, 2, bad);
          case "cut" -> down.cut(bad);
          default -> down.mayBeOut(bad);
        };
    Reply reply = ask(sketch(wrong, face(Looks.UP, "12", "14")));
    assertTrue(reply.wrong());
    assertTrue(
        reply.next().startsWith(place + ": '4o' ends in 'o', which is no unit"), reply.next());
    assertTrue(reply.answer().isEmpty());
  }

  @Test
  void whatIsMissingIsAskedForInTurn() {
    assertTrue(ask(Sketch.EMPTY).next().startsWith("Type the first face"));
    Reply one = ask(sketch(face(Looks.DOWN, "0", "0")));
    assertTrue(one.next().startsWith("Give the face opposite too"), one.next());
    Reply bare = ask(sketch(face(Looks.DOWN, "0", "0"), face(Looks.UP, "12", "")));
    assertEquals("up, measured, is missing; type where the rough face lies.", bare.next());
    assertFalse(bare.wrong());
    Sketch noCut = sketch(face(Looks.DOWN, "0", "0"), face(Looks.UP, "12", "14")).cut(Entry.BLANK);
    assertTrue(ask(noCut).next().startsWith("down, least cut is missing"), ask(noCut).next());
  }

  /** What is whole is drawn while a third face is still being typed, but there is no verdict. */
  @Test
  void whatIsWholeIsPlacedWhileTheRestIsTyped() {
    Reply reply =
        ask(
            sketch(
                face(Looks.DOWN, "0", "0"),
                face(Looks.UP, "12", "14"),
                FaceRow.blank(Looks.LEFT).finished(mm("0"))));
    assertTrue(reply.placing().isPresent());
    assertTrue(reply.answer().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "two", "0", "11", "NaN"})
  void aTurnWantsItsLimitInDegrees(String typed) {
    Sketch turning = CastingPicturesTest.sketch("bracket");
    Reply reply = ask(turning.moves(turning.moves().upTo(typed)));
    assertTrue(reply.answer().isEmpty());
    assertTrue(reply.next().contains("degrees"), reply.next());
  }

  @Test
  void aTurnWantsToKnowWhereOnTheFace() {
    Sketch turning =
        sketch(face(Looks.DOWN, "0", "0"), face(Looks.UP, "12", "14"))
            .moves(Sketch.Moves.USUAL.turning(Axis.X, true).upTo("2"));
    String next = ask(turning).next();
    assertTrue(next.startsWith("down, measured x is missing; a turn needs"), next);
  }

  @Test
  void aShiftAlongWhichNothingHoldsIsRefusedWithTheRemedy() {
    Sketch loose =
        sketch(face(Looks.DOWN, "0", "0"), face(Looks.UP, "12", "14"))
            .moves(Sketch.Moves.USUAL.shifting(Set.of(Axis.X, Axis.Z)));
    Reply reply = ask(loose);
    assertTrue(reply.wrong());
    assertTrue(reply.next().contains("leave x out of what may be shifted"), reply.next());
  }

  @Test
  void twoOfOneNameAreRefusedAndNamelessOnesAreToldApart() {
    FaceRow named = face(Looks.DOWN, "0", "0").named("foot");
    Reply reply = ask(sketch(named, face(Looks.UP, "12", "14").named("foot")));
    assertTrue(reply.next().contains("\"foot\" is there twice"), reply.next());
    FaceRow bore = FaceRow.blank(Looks.BORE_Y);
    assertEquals(
        List.of("bore 2", "bore", "bore 3"), sketch(bore, bore.named("bore"), bore).names());
  }

  /** A file that is opened and saved again says the same casting. */
  @ParameterizedTest
  @ValueSource(strings = {"bracket", "cylinder", "horn", "valve", "short"})
  void aFileComesBackAsItWas(String name) {
    Sketch sketch = CastingPicturesTest.sketch(name);
    Casting casting = ask(sketch).answer().orElseThrow().casting();
    String text =
        RealPage.FILES.writeCasting(
            new CastingFile(casting, sketch.holdsPressure()), LengthUnit.INCH);
    assertEquals(sketch, CastingText.sketch(RealPage.FILES.readCasting("again", text)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"bracket", "cylinder", "horn", "valve", "short"})
  void aDraftComesBackAsItWas(String name) {
    Sketch sketch = CastingPicturesTest.sketch(name);
    assertEquals(sketch, Draft.read(Draft.write(sketch)));
  }

  @Test
  void aDraftKeepsWhatIsNoLengthAndLeavesOutWhatItCannotUnderstand() {
    Sketch half = sketch(face(Looks.DOWN, "4o", "").named("foot"));
    Sketch kept = Draft.read(Draft.write(half) + "\nrow\tx\tSIDEWAYS\nnoise");
    assertEquals("4o", kept.row(0).finished().typed());
    assertTrue(ask(kept).wrong());
    assertEquals(1, kept.rows().size());
    assertEquals(Sketch.EMPTY, Draft.read(""));
  }

  @Test
  void theCopiedTableHasItsHeadsAndFigures() {
    Sketch sketch = sketch(face(Looks.DOWN, "0", "0"), face(Looks.UP, "12", "14"));
    List<String> lines = TableText.of(sketch, ask(sketch), LengthUnit.MILLIMETRE).lines().toList();
    assertTrue(lines.get(0).startsWith("Face\tLooks\tDrawing, mm\tCut, mm"), lines.get(0));
    assertEquals("up\tup +z\t12\t0.5\t0.1\t1.00\t1.00\t0.40\tgoverns", lines.get(2));
    assertTrue(lines.get(3).startsWith("cleans up\t0.40 mm"), lines.get(3));
  }
}
