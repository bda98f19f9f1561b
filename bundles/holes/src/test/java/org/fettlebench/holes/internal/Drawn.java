package org.fettlebench.holes.internal;

import java.util.List;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.Point;

/** Finds in a drawing what a test asks for. */
public record Drawn(Drawing drawing) {
  private <T extends Item> List<T> all(Class<T> kind) {
    return drawing.items().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  public List<Item.Circle> circles(LineKind line) {
    return all(Item.Circle.class).stream().filter(each -> each.line() == line).toList();
  }

  public List<Item.Path> paths(LineKind line) {
    return all(Item.Path.class).stream().filter(each -> each.line() == line).toList();
  }

  public List<Item.Area> areas(Tone tone) {
    return all(Item.Area.class).stream().filter(each -> each.tone() == tone).toList();
  }

  public List<Point> markers(Item.Mark mark) {
    return all(Item.Marker.class).stream()
        .filter(each -> each.mark() == mark)
        .map(Item.Marker::at)
        .toList();
  }

  public List<Item.Label> labels() {
    return all(Item.Label.class);
  }

  public Item.Label label(String words) {
    return labels().stream().filter(each -> each.words().equals(words)).findFirst().orElseThrow();
  }

  public List<Item.Dimension> dimensions() {
    return all(Item.Dimension.class);
  }

  public Item.Dimension dimension(String words) {
    return dimensions().stream()
        .filter(each -> each.words().equals(words))
        .findFirst()
        .orElseThrow();
  }

  /** Returns the radius of a round area: every point of its shell as far from the middle. */
  public static double radius(Item.Area area, Point middle) {
    double least = area.shell().stream().mapToDouble(middle::distanceMm).min().orElseThrow();
    double most = area.shell().stream().mapToDouble(middle::distanceMm).max().orElseThrow();
    if (most - least > 1e-9) {
      throw new AssertionError("not round: " + least + " to " + most);
    }
    return most;
  }

  /** Returns the area inside a closed line (the sum of its trapezoids), positive either way. */
  public static double area(List<Point> shell) {
    double twice = 0;
    Point from = shell.get(shell.size() - 1);
    for (Point to : shell) {
      twice += from.xMm() * to.yMm() - to.xMm() * from.yMm();
      from = to;
    }
    return Math.abs(twice) / 2;
  }
}
