package org.fettlebench.fits;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.fettlebench.measure.Point;

/**
 * What came of a seat question. All allowances are radii of position error.
 *
 * <p>Two answers are equal when their question, verdict and figures are; the regions follow from
 * the question and are only worked out when they are asked for.
 */
public final class SeatAnswer {
  /**
   * How far the boundary of {@link #allowed()} is from the true one at most, where that is an arc
   * of up to 80 mm radius: a chance over it is then out by less than 0.1 per cent for errors of
   * 0.06 mm and more.
   */
  public static final double REGION_ERROR_MM = 0.0001;

  private final SeatQuestion question;
  private final Verdict verdict;
  private final Figures figures;
  private final Governing governing;
  private final List<String> cautions;
  private final Supplier<List<Region>> regions;
  private volatile List<Region> allowed;

  /**
   * The figures of an answer.
   *
   * @param best the centre farthest from every boundary; of equally good ones one close to the
   *     intended centre; when nowhere is allowed, the least bad one
   * @param allowanceAtBestMm how far the hole may be out from there; negative when nowhere is
   *     allowed
   * @param allowanceAtIntendedMm how far the hole may be out from the intended centre; when that
   *     fails already, less the distance to the nearest allowed centre (or, when nowhere is
   *     allowed, less the greatest lack of room)
   * @param spannerFromDegrees the direction, anticlockwise from x, from which an open spanner has
   *     most room at the intended centre; empty when none is asked for
   */
  public record Figures(
      Point best,
      double allowanceAtBestMm,
      double allowanceAtIntendedMm,
      OptionalDouble spannerFromDegrees) {}

  /**
   * Makes an answer.
   *
   * @param question what was asked
   * @param verdict in a word
   * @param figures its figures
   * @param governing the feature with the least room at the intended centre
   * @param cautions what is odd about the question and may be a slip, for people
   * @param regions works out the allowed centres; pure, called once at most per reading thread
   */
  public SeatAnswer(
      SeatQuestion question,
      Verdict verdict,
      Figures figures,
      Governing governing,
      List<String> cautions,
      Supplier<List<Region>> regions) {
    this.question = question;
    this.verdict = verdict;
    this.figures = figures;
    this.governing = governing;
    this.cautions = List.copyOf(cautions);
    this.regions = regions;
  }

  /** Returns what was asked. */
  public SeatQuestion question() {
    return question;
  }

  /** Returns the answer in a word. */
  public Verdict verdict() {
    return verdict;
  }

  /**
   * Returns where the centre may be; empty when nowhere. For drawing: its arcs are broken into
   * chords. Worked out at the first call, which takes longer than the figures did.
   */
  public List<Region> allowed() {
    List<Region> known = allowed;
    if (known == null) {
      known = List.copyOf(regions.get());
      allowed = known;
    }
    return known;
  }

  /** Returns the best centre, see {@link Figures}. */
  public Point best() {
    return figures.best();
  }

  /** Returns the allowance at the best centre, see {@link Figures}. */
  public double allowanceAtBestMm() {
    return figures.allowanceAtBestMm();
  }

  /** Returns the allowance at the intended centre, see {@link Figures}. */
  public double allowanceAtIntendedMm() {
    return figures.allowanceAtIntendedMm();
  }

  /** Returns from where an open spanner comes, see {@link Figures}. */
  public OptionalDouble spannerFromDegrees() {
    return figures.spannerFromDegrees();
  }

  /** Returns the feature with the least room at the intended centre. */
  public Governing governing() {
    return governing;
  }

  /** Returns what is odd about the question and may be a slip; sentences without their stop. */
  public List<String> cautions() {
    return cautions;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SeatAnswer answer
        && answer.question.equals(question)
        && answer.verdict == verdict
        && answer.figures.equals(figures)
        && answer.governing.equals(governing);
  }

  @Override
  public int hashCode() {
    return Objects.hash(question, verdict, figures);
  }

  @Override
  public String toString() {
    return question.seat().name() + ": " + verdict + ", " + figures + ", " + governing;
  }

  /**
   * A part of the plane.
   *
   * @param shell outer boundary
   * @param holes inner boundaries
   */
  public record Region(List<Point> shell, List<List<Point>> holes) {
    /** Copies what could change. */
    public Region {
      shell = List.copyOf(shell);
      holes = holes.stream().map(List::copyOf).toList();
    }
  }

  /**
   * The feature that leaves least room.
   *
   * @param kind what it is
   * @param name for people, such as "edge from corner 2 to corner 3" or "cylinder wall"
   * @param meets what would meet it, such as "head", "washer" or "ring spanner's rim"
   * @param line the feature from one end to the other, arcs broken; one point for a round one
   * @param nearest its point nearest to the intended centre
   * @param distanceMm from the intended centre to that point; negative when the centre lies on the
   *     wrong side of it: off the flat, or over the hollow
   * @param neededMm what the head or the metal needs there; {@code distanceMm - neededMm} is the
   *     room that is left
   */
  public record Governing(
      Kind kind,
      String name,
      String meets,
      List<Point> line,
      Point nearest,
      double distanceMm,
      double neededMm) {
    /** Copies what could change. */
    public Governing {
      line = List.copyOf(line);
    }

    /** Returns one end of it. */
    public Point from() {
      return line.get(0);
    }

    /** Returns the other end of it; the same for a round one. */
    public Point to() {
      return line.get(line.size() - 1);
    }

    /** Kinds of feature. */
    public enum Kind {
      /** An edge of the flat. */
      EDGE,
      /** A wall above the flat. */
      WALL,
      /** Metal between hole and edge on the upper face. */
      METAL,
      /** Metal between hole and edge on the far face. */
      METAL_BELOW,
      /** A hollow below the flat. */
      CAVITY,
      /** Another head. */
      NEIGHBOUR
    }
  }
}
