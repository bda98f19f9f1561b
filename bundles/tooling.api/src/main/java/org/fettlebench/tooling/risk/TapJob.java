package org.fettlebench.tooling.risk;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.work.WorkMaterial;

/**
 * A hole to be tapped.
 *
 * @param thread to tap
 * @param hole diameter of the hole; below the major diameter
 * @param material that is tapped
 * @param depth of the thread in the metal, above nothing; the thickness where it goes right through
 * @param through whether the hole goes right through
 * @param tap sort of tap
 * @param flutes of the tap, 2 to 6; empty for the number usual at the size
 */
public record TapJob(
    ScrewThread thread,
    Length hole,
    WorkMaterial material,
    Length depth,
    boolean through,
    TapSort tap,
    Optional<Integer> flutes) {
  /** Least flutes of a tap. */
  public static final int LEAST_FLUTES = 2;

  /** Most flutes of a tap. */
  public static final int MOST_FLUTES = 6;

  /**
   * Checks the ranges.
   *
   * @throws MeasureException naming the figure that is outside
   */
  public TapJob {
    if (!(hole.isPositive() && hole.compareTo(thread.major()) < 0)) {
      throw new MeasureException(
          "hole %s leaves no thread: it must be above 0 mm and below the major diameter %s of %s"
              .formatted(hole, thread.major(), thread.designation()));
    }
    if (!depth.isPositive()) {
      throw new MeasureException("depth of thread " + depth + " must be above 0 mm");
    }
    flutes.ifPresent(TapJob::check);
  }

  private static void check(int flutes) {
    if (!(flutes >= LEAST_FLUTES && flutes <= MOST_FLUTES)) {
      throw new MeasureException(
          "%d flutes is outside %d to %d".formatted(flutes, LEAST_FLUTES, MOST_FLUTES));
    }
  }

  /** Returns the same job with another hole. */
  public TapJob withHole(Length other) {
    return new TapJob(thread, other, material, depth, through, tap, flutes);
  }

  /** Returns the same job with another depth. */
  public TapJob withDepth(Length other) {
    return new TapJob(thread, hole, material, other, through, tap, flutes);
  }

  /** Returns the same job with another tap, and the flutes usual for it. */
  public TapJob withTap(TapSort other) {
    return new TapJob(thread, hole, material, depth, through, other, Optional.empty());
  }

  /** Returns the same job in another material. */
  public TapJob withMaterial(WorkMaterial other) {
    return new TapJob(thread, hole, other, depth, through, tap, flutes);
  }
}
