package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.holes.correct.Reading;
import org.fettlebench.measure.Point;

/** What a hole can be measured from on a sketch, and how. */
final class Recipes {
  private Recipes() {}

  /**
   * A way of reading.
   *
   * @param words for people
   * @param to which part of the hole is read
   * @param pin whether a pin stands in it
   */
  record Way(String words, Reading.To to, boolean pin) {}

  /** The ways, those that are usual first. */
  static final List<Way> WAYS =
      List.of(
          new Way("calliper over a pin in the hole", Reading.To.OVER_PIN, true),
          new Way("calliper between, to the pin", Reading.To.TO_PIN, true),
          new Way("rule, to the near rim", Reading.To.NEAR_RIM, false),
          new Way("rule, to the far rim", Reading.To.FAR_RIM, false),
          new Way("to the centre", Reading.To.CENTRE, false));

  /** Returns edges, corners and other heads' holes of a sketch. */
  static List<Reading.Reference> references(Sketch sketch) {
    List<Reading.Reference> all = new ArrayList<>();
    Shape shape = sketch.shape();
    if (shape.bent(shape.corners())) {
      bent(shape.outline(shape.corners()), all);
    } else {
      straight(shape.corners(), all);
    }
    for (Seat.Neighbour head : shape.neighbours()) {
      all.add(new Reading.Spot("hole of " + head.name(), head.centre(), 0));
    }
    return all;
  }

  /** Only what can be measured from: straight edges, and corners that are sharp. */
  private static void bent(Outline outline, List<Reading.Reference> all) {
    for (Outline.Edge edge : outline.edges()) {
      if (edge.arc().isEmpty()) {
        all.add(new Reading.Edge(edge.name(), edge.from(), edge.to()));
      }
    }
    for (int i = 0; i < outline.corners().size(); i++) {
      if (outline.corners().get(i).roundedMm() == 0) {
        all.add(new Reading.Spot("corner " + (i + 1), outline.corners().get(i).at(), 0));
      }
    }
  }

  private static void straight(List<Point> corners, List<Reading.Reference> all) {
    for (int i = 0; i < corners.size(); i++) {
      int next = (i + 1) % corners.size();
      String name = "edge " + (i + 1) + " to " + (next + 1);
      all.add(new Reading.Edge(name, corners.get(i), corners.get(next)));
    }
    for (int i = 0; i < corners.size(); i++) {
      all.add(new Reading.Spot("corner " + (i + 1), corners.get(i), 0));
    }
  }
}
