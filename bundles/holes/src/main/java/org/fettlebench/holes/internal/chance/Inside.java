package org.fettlebench.holes.internal.chance;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.measure.Point;

/**
 * Tells whether a place lies in a region: a ray to its right crosses the boundary an odd number of
 * times. The region is cut into level bands of equal height, so that a place meets only the edges
 * of its own band.
 */
final class Inside {
  private final List<Edge> edges = new ArrayList<>();
  private final List<List<Edge>> bands = new ArrayList<>();
  private final double lowest;
  private final double bandMm;

  /**
   * An edge that is not level, from its lower end up.
   *
   * @param x of its lower end
   * @param low y of its lower end
   * @param high y of its upper end
   * @param lean step along x for each along y
   */
  private record Edge(double x, double low, double high, double lean) {
    static Edge of(Point lower, Point upper) {
      double lean = (upper.xMm() - lower.xMm()) / (upper.yMm() - lower.yMm());
      return new Edge(lower.xMm(), lower.yMm(), upper.yMm(), lean);
    }

    /** An end counts for the edge above it only, so that a ray through a corner crosses once. */
    boolean rightOf(double placeX, double placeY) {
      return placeY >= low && placeY < high && placeX < x + lean * (placeY - low);
    }
  }

  Inside(List<SeatAnswer.Region> region) {
    for (SeatAnswer.Region part : region) {
      ring(part.shell());
      part.holes().forEach(this::ring);
    }
    lowest = edges.stream().mapToDouble(Edge::low).min().orElse(0);
    double highest = edges.stream().mapToDouble(Edge::high).max().orElse(0);
    bandMm = (highest - lowest) / edges.size();
    edges.forEach(each -> bands.add(new ArrayList<>()));
    for (Edge edge : edges) {
      for (int band = band(edge.low()); band <= band(edge.high()); band++) {
        bands.get(band).add(edge);
      }
    }
  }

  private void ring(List<Point> ring) {
    Point from = ring.get(ring.size() - 1);
    for (Point to : ring) {
      if (from.yMm() < to.yMm()) {
        edges.add(Edge.of(from, to));
      } else if (from.yMm() > to.yMm()) {
        edges.add(Edge.of(to, from));
      }
      from = to;
    }
  }

  /** Rises with y, so that between the bands of an edge's ends lie all that it passes. */
  private int band(double y) {
    return (int) Math.max(0, Math.min(bands.size() - 1.0, (y - lowest) / bandMm));
  }

  boolean holds(double x, double y) {
    boolean odd = false;
    if (!bands.isEmpty()) {
      for (Edge edge : bands.get(band(y))) {
        odd ^= edge.rightOf(x, y);
      }
    }
    return odd;
  }
}
