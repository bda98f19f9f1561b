package org.fettlebench.holes.internal.otherface;

import java.util.List;
import java.util.stream.IntStream;
import org.fettlebench.holes.correct.HoleException;
import org.fettlebench.holes.internal.Outline;
import org.fettlebench.holes.otherface.FaceMark.EdgeDistance;

/**
 * Chooses the two edges to mark from: those with which slips of setting and of the square leave the
 * mark least uncertain, so near ones that cross squarely and give the square something to bear on.
 */
final class EdgePair {
  /** Sine of the crossing under which a slip counts twice and more. */
  static final double POOR = 0.5;

  /** Longest stock of a square that is taken to such work; common practice, no source. */
  static final double STOCK_MM = 40;

  /** Sine of the least crossing that still fixes a place: 1 degree, as for readings. */
  private static final double LEAST = Math.sin(Math.toRadians(1));

  private final Outline face;
  private final List<EdgeDistance> distances;

  EdgePair(Outline face, List<EdgeDistance> distances) {
    this.face = face;
    this.distances = distances;
  }

  /**
   * Returns how many times one slip counts at the mark in a line that is squared up from an edge:
   * once in placing the square at the foot; once more at the end of its stock, which leans the line
   * by that much over what the stock bears on (the edge to both sides of the foot, as far as the
   * nearer end, or the stock). Both are independent; that they are alike is common practice, no
   * source.
   */
  static double slips(EdgeDistance distance) {
    double bearing = Math.min(2 * distance.endRoomMm(), STOCK_MM);
    return Math.hypot(1, distance.distanceMm() / bearing);
  }

  /** Returns how many times a slip counts at the mark where the lines of two edges cross. */
  static double slips(EdgeDistance one, EdgeDistance other) {
    return Math.hypot(slips(one), slips(other)) / crossing(one, other);
  }

  /** Returns the sine of the angle between two edges. */
  static double crossing(EdgeDistance one, EdgeDistance other) {
    double ax = one.end().xMm() - one.start().xMm();
    double ay = one.end().yMm() - one.start().yMm();
    double bx = other.end().xMm() - other.start().xMm();
    double by = other.end().yMm() - other.start().yMm();
    return Math.abs(ax * by - ay * bx) / (Math.hypot(ax, ay) * Math.hypot(bx, by));
  }

  /** Returns the pair that was chosen by the person, or the best. */
  List<EdgeDistance> choose(List<Integer> chosen) {
    return chosen.isEmpty() ? best() : said(chosen);
  }

  private List<EdgeDistance> best() {
    List<EdgeDistance> best = List.of();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < distances.size(); i++) {
      for (int j = i + 1; j < distances.size(); j++) {
        EdgeDistance one = distances.get(i);
        EdgeDistance other = distances.get(j);
        double slips = slips(one, other);
        if (crossing(one, other) > LEAST && slips < least) {
          least = slips;
          best = List.of(one, other);
        }
      }
    }
    if (best.isEmpty()) {
      throw new HoleException(
          "the far face has no two edges that cross and lie square opposite the mark, so it cannot"
              + " be measured there; drill from above, or spot through");
    }
    return best;
  }

  private List<EdgeDistance> said(List<Integer> chosen) {
    if (chosen.size() != 2 || chosen.get(0).equals(chosen.get(1))) {
      throw new HoleException(
          "edges " + chosen + ": two different edges of the far face are needed to mark from");
    }
    List<EdgeDistance> pair = chosen.stream().map(this::measurable).toList();
    if (!(crossing(pair.get(0), pair.get(1)) > LEAST)) {
      throw new HoleException(
          "edges "
              + chosen.get(0)
              + " and "
              + chosen.get(1)
              + " of the far face are parallel and do not fix a place; choose one across them: "
              + numbers());
    }
    return pair;
  }

  private EdgeDistance measurable(int edge) {
    if (!(edge >= 1 && edge <= face.edges())) {
      throw new HoleException("edge " + edge + " is outside 1 to " + face.edges());
    }
    return distances.stream()
        .filter(distance -> distance.edge() == edge)
        .findFirst()
        .orElseThrow(
            () ->
                new HoleException(
                    face.name(edge)
                        + " of the far face does not lie square opposite the mark, so nothing can"
                        + " be measured from it; those that can: "
                        + numbers()));
  }

  private String numbers() {
    return String.join(
        ", ",
        IntStream.rangeClosed(1, face.edges())
            .filter(edge -> distances.stream().anyMatch(d -> d.edge() == edge))
            .mapToObj(Integer::toString)
            .toList());
  }
}
