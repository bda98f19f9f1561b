package org.fettlebench.desktop.threads.internal.profile;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.measure.Point;
import org.fettlebench.threads.ThreadForm;

/**
 * The outline of a thread in a section along its axis: x along the axis from the middle of a crest,
 * y nothing at the major diameter and negative towards the axis, both in millimetres.
 *
 * <p>It follows from the form alone: the sharp triangle, how much of it is cut off at the crest
 * (1/8 of its height for ISO and Unified, half of what the basic depth leaves for Whitworth and
 * British Association), and the depth. What remains of the triangle at a rounded end gives the
 * radius: cut = r (1 / sin (half angle) - 1).
 */
public final class ThreadProfile {
  private static final int ARC_STEPS = 12;

  private final ThreadForm form;
  private final double pitchMm;
  private final double half;

  /** Makes the outline of a form at a pitch above 0. */
  public ThreadProfile(ThreadForm form, double pitchMm) {
    this.form = form;
    this.pitchMm = pitchMm;
    this.half = Math.toRadians(form.includedAngleDegrees() / 2);
  }

  /** Returns whether crests and roots of both sexes are rounded, not only the root of the screw. */
  public boolean rounded() {
    return form == ThreadForm.WHITWORTH || form == ThreadForm.BRITISH_ASSOCIATION;
  }

  private double heightMm() {
    return form.triangleHeightPerPitch() * pitchMm;
  }

  /** Returns how much of the sharp triangle is cut off at the screw's crest. */
  public double crestCutMm() {
    return rounded() ? (heightMm() - form.externalDepthPerPitch() * pitchMm) / 2 : heightMm() / 8;
  }

  /** Returns the depth of the screw's thread. */
  public double screwDepthMm() {
    return form.externalDepthPerPitch() * pitchMm;
  }

  /** Returns the depth of the nut's thread. */
  public double nutDepthMm() {
    return form.internalDepthPerPitch() * pitchMm;
  }

  /** Returns the radius at the root of the screw. */
  public double rootRadiusMm() {
    return radius(heightMm() - crestCutMm() - screwDepthMm());
  }

  private double radius(double cutMm) {
    return cutMm / (1 / Math.sin(half) - 1);
  }

  /** Returns the outline of the screw over so many pitches, left to right. */
  public List<Point> screw(int pitches) {
    return repeated(half(screwDepthMm(), true), pitches);
  }

  /** Returns the outline of the nut as the form has it, over so many pitches, left to right. */
  public List<Point> nut(int pitches) {
    return repeated(half(nutDepthMm(), rounded()), pitches);
  }

  /** Returns the outline of a nut tapped in a hole: its crests cut off where the hole is. */
  public List<Point> nut(int pitches, double holeDepthMm) {
    return cut(nut(pitches), -holeDepthMm);
  }

  /** Returns the outline from the middle of a crest to the middle of the next root. */
  private List<Point> half(double depthMm, boolean rootRounded) {
    List<Point> points = new ArrayList<>();
    double crest = crestCutMm();
    if (rounded()) {
      double r = radius(crest);
      arc(points, new Point(0, -r), r, Math.PI / 2, half);
    } else {
      points.add(new Point(0, 0));
      points.add(new Point(crest * Math.tan(half), 0));
    }
    double cut = heightMm() - crest - depthMm;
    if (rootRounded) {
      double r = radius(cut);
      arc(points, new Point(pitchMm / 2, r - depthMm), r, Math.PI + half, Math.PI * 1.5);
    } else {
      points.add(new Point(pitchMm / 2 - cut * Math.tan(half), -depthMm));
      points.add(new Point(pitchMm / 2, -depthMm));
    }
    return points;
  }

  private static void arc(List<Point> points, Point centre, double r, double from, double to) {
    for (int i = 0; i <= ARC_STEPS; i++) {
      double angle = from + (to - from) * i / ARC_STEPS;
      points.add(centre.moved(r * Math.cos(angle), r * Math.sin(angle)));
    }
  }

  private List<Point> repeated(List<Point> halfPitch, int pitches) {
    List<Point> all = new ArrayList<>();
    for (int i = 0; i < pitches; i++) {
      double left = i * pitchMm;
      double right = left + pitchMm;
      halfPitch.forEach(point -> all.add(new Point(left + point.xMm(), point.yMm())));
      for (int k = halfPitch.size() - 2; k >= 0; k--) {
        all.add(new Point(right - halfPitch.get(k).xMm(), halfPitch.get(k).yMm()));
      }
    }
    return all;
  }

  /** Replaces what is below a level by the level itself. */
  public static List<Point> cut(List<Point> outline, double levelMm) {
    List<Point> all = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      Point point = outline.get(i);
      if (i > 0) {
        Point before = outline.get(i - 1);
        boolean crosses = (before.yMm() - levelMm) * (point.yMm() - levelMm) < 0;
        if (crosses) {
          double share = (levelMm - before.yMm()) / (point.yMm() - before.yMm());
          all.add(new Point(before.xMm() + share * (point.xMm() - before.xMm()), levelMm));
        }
      }
      all.add(new Point(point.xMm(), Math.max(levelMm, point.yMm())));
    }
    return all;
  }
}
