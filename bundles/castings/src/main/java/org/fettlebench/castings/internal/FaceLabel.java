package org.fettlebench.castings.internal;

import java.util.List;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.drawing.Item;
import org.fettlebench.measure.Point;

/** The name of a flat face with what comes off it, outside the face and clear of its spots. */
final class FaceLabel {
  /** Shares of the face at which words may stand, the best first. */
  private static final List<Double> SHARES = List.of(0.5, 0.38, 0.62, 0.26, 0.74);

  /** Words this share of the face away from a spot stand clear of it. */
  private static final double CLEAR_SHARE = 0.12;

  /** Letters of a line beside the drawing. */
  private static final int LONGEST = 18;

  private final PlacedPart part;
  private final FlatFace face;
  private final Axis line;

  FaceLabel(PlacedPart part, FlatFace face, Axis line) {
    this.part = part;
    this.face = face;
    this.line = line;
  }

  /** Returns where along the face words stand clear of the spots that are marked. */
  double clearOfSpots(double low, double high) {
    double best = (low + high) / 2;
    double most = -1;
    for (double share : SHARES) {
      double place = low + share * (high - low);
      double clear = Math.min(CLEAR_SHARE * (high - low), nearestSpot(place));
      if (clear > most) {
        best = place;
        most = clear;
      }
    }
    return best;
  }

  private double nearestSpot(double place) {
    return face.rough().size() == 1
        ? Double.POSITIVE_INFINITY
        : face.rough().stream()
            .mapToDouble(spot -> Math.abs(part.onDrawing(spot).alongMm(line) - place))
            .min()
            .orElseThrow();
  }

  /** Beside a drawing there is no room for long lines. */
  static String wrapped(String words) {
    StringBuilder lines = new StringBuilder();
    int length = 0;
    for (String word : words.split(" ")) {
      boolean next = length > 0 && length + 1 + word.length() > LONGEST;
      lines.append(length == 0 ? "" : next ? "\n" : " ").append(word);
      length = next ? word.length() : length + 1 + word.length();
    }
    return lines.toString();
  }

  /** Returns the words at a place; beside an upright face they take two lines. */
  Item.Label at(Point place, String off, CastingView view, boolean strong) {
    boolean upright = face.towards().axis() == view.across();
    boolean against = face.towards().sign() < 0;
    Item.Side side =
        upright
            ? against ? Item.Side.LEFT : Item.Side.RIGHT
            : against ? Item.Side.BELOW : Item.Side.ABOVE;
    return new Item.Label(
        place, upright ? wrapped(face.name()) + "\n" + off : face.name() + " " + off, side, strong);
  }
}
