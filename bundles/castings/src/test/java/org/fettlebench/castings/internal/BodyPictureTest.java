package org.fettlebench.castings.internal;

import static org.fettlebench.castings.internal.TrialDrawings.area;
import static org.fettlebench.castings.internal.TrialDrawings.draw;
import static org.fettlebench.castings.internal.TrialDrawings.face;
import static org.fettlebench.castings.internal.TrialDrawings.lines;
import static org.fettlebench.castings.internal.TrialDrawings.place;
import static org.fettlebench.castings.internal.TrialDrawings.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

/** What is known of the body is drawn, and no more. */
class BodyPictureTest {
  private static Placing plate() {
    return place(
        face("foot", Towards.DOWN, 0, new Spot(0, 0, -1)),
        face("top", Towards.UP, 20, new Spot(0, 0, 21)));
  }

  private static List<List<Point>> breaks(Drawing drawing) {
    return lines(drawing, LineKind.THIN).stream().filter(line -> line.size() == 6).toList();
  }

  /** 20 thick and nothing known across: drawn half as wide again, 30, broken off at both sides. */
  @Test
  void aPlateIsBrokenOffWhereNothingWasMeasured() {
    Drawing front = draw(plate(), CastingView.FRONT);
    assertEquals(20 * 30, area(front, Tone.PART), 1e-6);
    List<List<Point>> breaks = breaks(front);
    assertEquals(2, breaks.size());
    assertEquals(-15, breaks.get(0).get(0).xMm(), 1e-6);
    assertEquals(15, breaks.get(1).get(0).xMm(), 1e-6);
    for (List<Point> line : breaks) {
      // It stands out by 8 in a hundred at both ends; its zigzag is as wide to the left as right.
      assertEquals(-1.6, line.get(0).yMm(), 1e-6);
      assertEquals(21.6, line.get(5).yMm(), 1e-6);
      assertEquals(0.8, Math.abs(line.get(2).xMm() - line.get(0).xMm()), 1e-6);
      assertEquals(line.get(0).xMm() * 2, line.get(2).xMm() + line.get(3).xMm(), 1e-6);
      assertEquals(20, line.get(2).yMm() + line.get(3).yMm(), 1e-6);
    }
  }

  @Test
  void aBlockMeasuredAllRoundIsNotBrokenOff() {
    Placing block =
        place(
            face("left", Towards.LEFT, 0, new Spot(-1, 0, 0)),
            face("right", Towards.RIGHT, 40, new Spot(41, 0, 0)),
            face("foot", Towards.DOWN, 0, new Spot(0, 0, -1)),
            face("top", Towards.UP, 20, new Spot(0, 0, 21)));
    assertEquals(0, breaks(draw(block, CastingView.FRONT)).size());
    assertEquals(2, breaks(draw(block, CastingView.PLAN)).size(), "near and far are not known");
  }

  /** A cylinder of 38 with a port face 24 from its axis: half a disc and a rectangle. */
  @Test
  void aBossAndAFaceAreTiedTogether() {
    Placing cylinder =
        place(
            face("port face", Towards.RIGHT, 24, new Spot(26, 0, 0)),
            round(RoundFace.Kind.BOSS, 0, 0, 38, 42));
    Drawing end = draw(cylinder, CastingView.FRONT);
    double disc = Math.PI * 19 * 19;
    // Once for the body, and the boss over its own ring.
    assertEquals(disc / 2 + 24 * 38 + disc, area(end, Tone.PART), 0.003 * disc);
    assertEquals(0, breaks(end).size(), "a boss bounds it all round");
    assertTrue(breaks(draw(cylinder, CastingView.PLAN)).size() > 0, "but not along its axis");
  }
}
