package org.fettlebench.castings.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.measure.Point;

/** Places beside the part for the words of round ones, each tied to its circle by a leader. */
final class LeaderSlots {
  /** How far outside the part words begin, of its width. */
  private static final double OUTSIDE_SHARE = 0.12;

  private record Slot(boolean right, double share) {}

  private final PlacedPart part;
  private final CastingView view;
  private final List<Slot> slots = new ArrayList<>();
  private final Set<Feature> named;
  private int taken;

  LeaderSlots(Placing placing, PlacedPart part, CastingView view, Set<Feature> named) {
    this.part = part;
    this.named = named;
    this.view = view;
    boolean left = faced(placing, -1);
    boolean right = faced(placing, 1);
    // Where no face has its words there is the whole side; else the corners.
    for (boolean free : new boolean[] {true, false}) {
      for (double share : free ? new double[] {0.72, 0.28} : new double[] {0.9, 0.1}) {
        if (right != free) {
          slots.add(new Slot(true, share));
        }
        if (left != free) {
          slots.add(new Slot(false, share));
        }
      }
    }
  }

  /** Returns whether the words of a face stand at a side. */
  private boolean faced(Placing placing, int sign) {
    return placing.casting().features().stream()
        .anyMatch(
            one ->
                named.contains(one)
                    && one instanceof FlatFace face
                    && face.towards().axis() == view.across()
                    && face.towards().sign() == sign);
  }

  /**
   * Returns the words of a round one in the next free place, and the leader to its circle; nothing
   * when it is not to be named.
   */
  List<Item> label(RoundFace round, Point centre, String words, boolean strong) {
    if (!named.contains(round)) {
      return List.of();
    }
    double radiusMm = round.finishedDiameterMm() / 2;
    Slot slot = slots.get(taken++ % slots.size());
    double high = part.low(view.up()) + slot.share() * part.size(view.up());
    double out = OUTSIDE_SHARE * part.size(view.across());
    Point at =
        slot.right()
            ? part.placed(part.high(view.across()) + out, high)
            : part.placed(part.low(view.across()) - out, high);
    double length = centre.distanceMm(at);
    Point edge =
        centre.moved(
            radiusMm * (at.xMm() - centre.xMm()) / length,
            radiusMm * (at.yMm() - centre.yMm()) / length);
    Item.Side side = slot.right() ? Item.Side.RIGHT : Item.Side.LEFT;
    return List.of(
        new Item.Path(LineKind.THIN, List.of(edge, at), false),
        new Item.Label(at, words, side, strong));
  }
}
