package org.fettlebench.kits.internal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.fettlebench.fits.Seat;
import org.fettlebench.holes.patterns.EdgeRule;
import org.fettlebench.holes.patterns.EdgeRules;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Finding.Weight;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.JointRule;
import org.fettlebench.measure.Point;
import org.fettlebench.measure.Tolerances;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Says when a hole is so near an edge that it may tear out; stands aside where no table says. */
@Component
public final class EdgeDistanceRule implements JointRule {
  static final String NAME = "edge distance";

  /** The rule by which less is never taken; a club's table may give it another figure. */
  private static final String RULE = "structural-never-below";

  private final EdgeRules rules;

  /** Takes the rules of edge distance. */
  @Activate
  public EdgeDistanceRule(@Reference EdgeRules rules) {
    this.rules = rules;
  }

  @Override
  public String title() {
    return "distance from the edge";
  }

  @Override
  public List<Finding> look(JointCase joint) {
    Optional<EdgeRule> rule =
        rules.rules().stream().filter(each -> each.id().equals(RULE)).findFirst();
    return joint.joint().seat().isEmpty() || rule.isEmpty()
        ? List.of()
        : look(joint, joint.joint().seat().get(), rule.get());
  }

  private static List<Finding> look(JointCase joint, Seat seat, EdgeRule rule) {
    double fastener = joint.thread().major().millimetres();
    double distance =
        Stream.concat(Stream.of(seat.outline()), seat.underside().stream())
            .mapToDouble(outline -> distance(outline.points(), seat.intended()))
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    double least = rule.fastenerDiameters() * fastener;
    if (!(distance < least - Tolerances.GEOMETRY_SLACK_MM)) {
      return List.of();
    }
    double diameters = distance / fastener;
    return List.of(
        Finding.of(
            Weight.CAUTION,
            NAME,
            "The hole's centre is "
                + Say.sizeMm(distance)
                + " from the edge, only "
                + String.format(Locale.ROOT, "%.2f", diameters)
                + " diameters ("
                + rule.source().citation()
                + ", for "
                + rule.what()
                + ").",
            Say.mm("edgeDistance", distance),
            new Finding.Figure("edgeDistanceDiameters", diameters)));
  }

  private static double distance(List<Point> outline, Point centre) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < outline.size(); i++) {
      least =
          Math.min(least, distance(outline.get(i), outline.get((i + 1) % outline.size()), centre));
    }
    return least;
  }

  private static double distance(Point from, Point to, Point point) {
    double dx = to.xMm() - from.xMm();
    double dy = to.yMm() - from.yMm();
    double square = dx * dx + dy * dy;
    double along =
        square > 0
            ? ((point.xMm() - from.xMm()) * dx + (point.yMm() - from.yMm()) * dy) / square
            : 0;
    double held = Math.max(0, Math.min(1, along));
    return point.distanceMm(from.moved(held * dx, held * dy));
  }
}
