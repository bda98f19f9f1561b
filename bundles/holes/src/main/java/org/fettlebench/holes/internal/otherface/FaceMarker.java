package org.fettlebench.holes.internal.otherface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.fits.Outline.Corner;
import org.fettlebench.fits.Outline.Edge;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.Seats;
import org.fettlebench.fits.Verdict;
import org.fettlebench.holes.correct.HoleException;
import org.fettlebench.holes.internal.Outline;
import org.fettlebench.holes.internal.Say;
import org.fettlebench.holes.otherface.FaceMark;
import org.fettlebench.holes.otherface.FaceMark.EdgeDistance;
import org.fettlebench.holes.otherface.MarkQuestion;
import org.fettlebench.holes.otherface.OtherFaces;
import org.fettlebench.holes.otherface.Turn;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.fettlebench.measure.Tolerances;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Finds the mark on the far face, as seen with the part turned over. */
@Component
public final class FaceMarker implements OtherFaces {
  private final Seats seats;

  /** Takes what checks the seat above. */
  @Activate
  public FaceMarker(@Reference Seats seats) {
    this.seats = seats;
  }

  @Override
  public FaceMark mark(MarkQuestion question) {
    guard(question);
    Outline upper = Outline.of("upper face", question.faces().upper());
    Outline face = Outline.of("far face", seen(question.turn(), question.faces().far()));
    Point mark = question.turn().seen(question.target());
    inside(question, upper, face, mark);
    List<EdgeDistance> distances = new Distances(face, mark).all();
    List<EdgeDistance> pair = new EdgePair(face, distances).choose(question.chosen());
    double radius = question.hole().diameterMm() / 2;
    double metal = face.toEdgeMm(mark) - radius;
    Optional<SeatAnswer> above = above(question);
    return new FaceMark(
        question,
        mark,
        face.points(),
        seen(question.turn(), question.faces().upper()).points(),
        distances,
        pair,
        EdgePair.slips(pair.get(0), pair.get(1)),
        metal,
        above,
        cautions(metal, upper.toEdgeMm(question.target()) - radius, pair, above));
  }

  /** Returns a closed line as it is seen with the part turned over. */
  static org.fettlebench.fits.Outline seen(Turn turn, org.fettlebench.fits.Outline line) {
    return org.fettlebench.fits.Outline.ofCorners(
        line.corners().stream()
            .map(
                corner ->
                    new Corner(
                        turn.seen(corner.at()),
                        corner.roundedMm(),
                        corner.through().map(turn::seen)))
            .toList());
  }

  private static void guard(MarkQuestion question) {
    MarkQuestion.Hole hole = question.hole();
    within("hole diameter", hole.diameterMm());
    within("depth from face to face", hole.depthMm());
    if (!(hole.lead() >= 0 && hole.lead() <= 1)) {
      throw new HoleException(
          "wander of the drill "
              + hole.lead()
              + " mm per mm of depth is outside 0 to 1; 0.01 is 1 mm in 100 mm");
    }
  }

  private static void within(String what, double mm) {
    if (!(mm > 0 && mm <= 100_000)) {
      throw new HoleException(what + " " + mm + " mm is not above 0 and at most 100000 mm");
    }
  }

  private static void inside(MarkQuestion question, Outline upper, Outline face, Point mark) {
    if (!upper.covers(question.target())) {
      throw new HoleException(
          "the hole's centre lies "
              + Say.size(upper.toEdgeMm(question.target()))
              + " off the upper face; check its co-ordinates, which are as seen from above");
    }
    if (!face.covers(mark)) {
      throw new HoleException(
          "the mark would lie "
              + Say.size(face.toEdgeMm(mark))
              + " off the far face, since the sides run in below; drill from above, or check the"
              + " far face, whose corners are as seen from above too");
    }
  }

  private Optional<SeatAnswer> above(MarkQuestion question) {
    MarkQuestion.Hole hole = question.hole();
    return question
        .seat()
        .map(
            seat ->
                seats.check(
                    seat.withIntended(question.target())
                        .withError(
                            hole.errorAboveMm(),
                            hole.marking().title()
                                + ", "
                                + hole.marking().means()
                                + "; and wander over the depth, "
                                + hole.leadMeans())));
  }

  private static List<String> cautions(
      double metal, double metalAbove, List<EdgeDistance> pair, Optional<SeatAnswer> above) {
    List<String> cautions = new ArrayList<>();
    breaksOut("far", metal, cautions);
    breaksOut("upper", metalAbove, cautions);
    double crossing = EdgePair.crossing(pair.get(0), pair.get(1));
    if (crossing < EdgePair.POOR) {
      cautions.add(
          "the two edges cross at a small angle, so a slip in marking counts "
              + Math.round(10 / crossing) / 10.0
              + " times along them; mark from a third edge too");
    }
    above
        .filter(seat -> seat.verdict() == Verdict.TIGHT)
        .ifPresent(
            seat ->
                cautions.add(
                    "above there is room for "
                        + Say.small(seat.allowanceAtIntendedMm())
                        + " only: drill a pilot first, measure where it comes out, and correct"));
    above
        .filter(seat -> seat.verdict() == Verdict.FOULS)
        .ifPresent(
            seat -> cautions.add("the head above fouls even when the hole comes out just right"));
    return cautions;
  }

  private static void breaksOut(String face, double metal, List<String> cautions) {
    if (metal < -Tolerances.GEOMETRY_SLACK_MM) {
      cautions.add(
          "the hole breaks out of the " + face + " face by " + Say.small(-metal) + " at its edge");
    }
  }

  @Override
  public Drawing draw(FaceMark mark, LengthUnit unit) {
    return FarFacePicture.far(mark, unit);
  }

  @Override
  public Drawing drawAbove(FaceMark mark, LengthUnit unit) {
    return FarFacePicture.above(mark, unit);
  }

  /** Distances of a mark from the edges that can be measured from. */
  private record Distances(Outline face, Point mark) {
    List<EdgeDistance> all() {
      List<EdgeDistance> distances = new ArrayList<>();
      for (int edge = 1; edge <= face.edges(); edge++) {
        int number = edge;
        face.straight(edge).flatMap(straight -> to(number, straight)).ifPresent(distances::add);
      }
      distances.sort(Comparator.comparingDouble(EdgePair::slips));
      return distances;
    }

    /** The foot of the distance must lie on the edge, in plain sight of the mark. */
    private Optional<EdgeDistance> to(int edge, Edge straight) {
      Point start = straight.from();
      Point end = straight.to();
      double length = start.distanceMm(end);
      double ux = (end.xMm() - start.xMm()) / length;
      double uy = (end.yMm() - start.yMm()) / length;
      double along = (mark.xMm() - start.xMm()) * ux + (mark.yMm() - start.yMm()) * uy;
      double room = Math.min(along, length - along);
      if (!(room > Tolerances.GEOMETRY_SLACK_MM)) {
        return Optional.empty();
      }
      Point foot = start.moved(along * ux, along * uy);
      if (!face.sees(mark, foot, Tolerances.GEOMETRY_SLACK_MM)) {
        return Optional.empty();
      }
      String name =
          SideNames.of(face.outward(straight))
              + " edge, corner "
              + edge
              + " to "
              + (edge % face.edges() + 1);
      return Optional.of(
          new EdgeDistance(edge, name, start, end, foot, mark.distanceMm(foot), room));
    }
  }
}
