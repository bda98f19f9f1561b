package org.fettlebench.castings.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.fettlebench.castings.CastingView;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.PlacingWords;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** One view of a placed casting in the making, to scale in the rough frame. */
final class CastingPicture {
  private static final double MARGIN_SHARE = 0.02;

  private final Placing placing;
  private final CastingView view;
  private final LengthUnit unit;

  CastingPicture(Placing placing, CastingView view, LengthUnit unit) {
    this.placing = placing;
    this.view = view;
    this.unit = unit;
  }

  Drawing draw(Set<Feature> named) {
    PlacedPart part = new PlacedPart(placing, view);
    BodyPicture body = new BodyPicture(placing, part, view);
    FlatPicture flats = new FlatPicture(part, view, unit, named);
    RoundPicture rounds =
        new RoundPicture(part, view, unit, new LeaderSlots(placing, part, view, named));
    for (Placing.Coming one : placing.features()) {
      if (one.feature() instanceof FlatFace face && face.towards().axis() != view.along()) {
        flats.draw(one, face);
      } else if (one.feature() instanceof RoundFace round) {
        rounds.draw(one, round);
      }
    }
    List<Item> items = new ArrayList<>();
    items.add(new Item.Area(Tone.PART, body.outline(), List.of()));
    items.addAll(flats.areas());
    items.addAll(rounds.areas());
    items.addAll(body.breaks());
    items.addAll(flats.lines());
    items.addAll(rounds.lines());
    List<Point> reached = new ArrayList<>(body.outline());
    reached.addAll(flats.reached());
    reached.addAll(rounds.reached());
    return new Drawing(title(), items, frame(reached));
  }

  private String title() {
    PlacingWords words = new PlacingWords(placing, unit);
    return placing.casting().name()
        + " "
        + view.words()
        + ": "
        + words.verdict()
        + ", "
        + words.spare();
  }

  /** Returns what comes off, short enough for a drawing. */
  static String off(Placing.Coming one, LengthUnit unit) {
    String least = LengthFormat.show(Length.ofMillimetres(one.leastMm()), unit);
    String most = LengthFormat.show(Length.ofMillimetres(one.mostMm()), unit);
    return least.equals(most)
        ? least
        : LengthFormat.number(Length.ofMillimetres(one.leastMm()), unit) + " to " + most;
  }

  private static Drawing.Frame frame(List<Point> reached) {
    double minX = Collections.min(reached.stream().map(Point::xMm).toList());
    double minY = Collections.min(reached.stream().map(Point::yMm).toList());
    double maxX = Collections.max(reached.stream().map(Point::xMm).toList());
    double maxY = Collections.max(reached.stream().map(Point::yMm).toList());
    double edge = MARGIN_SHARE * Math.max(maxX - minX, maxY - minY);
    return new Drawing.Frame(minX - edge, minY - edge, maxX + edge, maxY + edge);
  }
}
