package org.fettlebench.desktop.threads.internal.compare;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;

/**
 * A screw in a nut of another thread: how their crests run apart, thread after thread, when the
 * first ones start together. Lengths are millimetres; basic sizes unless said.
 *
 * @param screw whose external thread is meant
 * @param nut whose internal thread is meant
 * @param loosest axial play of the smallest screw in the largest nut that the usual classes allow,
 *     both flanks together; empty where a series has no limits or the play is none
 */
public record Crossing(ScrewThread screw, ScrewThread nut, OptionalDouble loosest) {
  /** Below this the two are one thread: a micron is finer than any limit here. */
  private static final double SAME_MM = 0.001;

  private static final int USUAL_MOST = 10;
  private static final int USUAL_LEAST = 3;

  /** Returns the crossing without a word on play, when no limits are known. */
  public static Crossing of(ScrewThread screw, ScrewThread nut) {
    return new Crossing(screw, nut, OptionalDouble.empty());
  }

  /**
   * Returns the crossing with the play that limits leave: (nut's largest effective diameter - the
   * screw's least) x tangent of half the thread's angle, the wider angle where they differ.
   */
  public static Crossing of(
      ScrewThread screw,
      ScrewThread nut,
      Optional<LimitsOfThread> ofScrew,
      Optional<LimitsOfThread> ofNut) {
    OptionalDouble play = OptionalDouble.empty();
    var least = ofScrew.flatMap(limits -> limits.effective().least());
    var most = ofNut.flatMap(limits -> limits.effective().most());
    if (least.isPresent() && most.isPresent()) {
      double gap = most.get().minus(least.get()).millimetres();
      double angle =
          Math.max(screw.form().includedAngleDegrees(), nut.form().includedAngleDegrees());
      double axial = gap * Math.tan(Math.toRadians(angle / 2));
      play = axial > 0 ? OptionalDouble.of(axial) : play;
    }
    return new Crossing(screw, nut, play);
  }

  /** Returns by how much the nut's pitch is above the screw's. */
  public double driftPerThreadMm() {
    return nut.pitch().minus(screw.pitch()).millimetres();
  }

  /** Returns how far the crests are apart after so many threads. */
  public double apartMm(int threads) {
    return Math.abs(driftPerThreadMm()) * threads;
  }

  /** Returns the finer of the two pitches. */
  public double finerMm() {
    return Math.min(screw.pitch().millimetres(), nut.pitch().millimetres());
  }

  /** Returns how far the crests are apart after so many threads, in finer pitches. */
  public double apartPitches(int threads) {
    return apartMm(threads) / finerMm();
  }

  /** Returns after how many threads the crests are half a pitch apart; empty if they never are. */
  public OptionalDouble threadsToHalf() {
    double drift = Math.abs(driftPerThreadMm());
    return drift < SAME_MM / 10 ? OptionalDouble.empty() : OptionalDouble.of(finerMm() / 2 / drift);
  }

  /** Returns after how many threads the flanks of even the loosest pair bind. */
  public OptionalDouble bindsAfter() {
    double drift = Math.abs(driftPerThreadMm());
    return loosest.isPresent() && drift > 0
        ? OptionalDouble.of(loosest.getAsDouble() / drift)
        : OptionalDouble.empty();
  }

  /** Returns by how much the screw's major diameter is above the nut's. */
  public double largerMm() {
    return screw.major().minus(nut.major()).millimetres();
  }

  /** Returns whether pitches, diameters and angles are the same. */
  public boolean same() {
    return Math.abs(largerMm()) < SAME_MM
        && Math.abs(driftPerThreadMm()) < SAME_MM / 10
        && screw.form().includedAngleDegrees() == nut.form().includedAngleDegrees();
  }

  /** Returns whether the screw slips through without touching a thread. */
  public boolean slipsThrough() {
    return screw.major().compareTo(nut.minorInternal()) <= 0;
  }

  /** Returns whether the screw's core alone is too large for the nut's opening. */
  public boolean cannotEnter() {
    return screw.effective().compareTo(nut.major()) >= 0;
  }

  /** Returns how many threads are worth drawing: to half a pitch apart, else a usual engagement. */
  public int usualThreads() {
    OptionalDouble half = threadsToHalf();
    if (half.isPresent() && half.getAsDouble() <= USUAL_MOST) {
      return Math.max(1, (int) Math.round(half.getAsDouble()));
    }
    double engaged = screw.major().millimetres() / screw.pitch().millimetres();
    return (int) Math.max(USUAL_LEAST, Math.min(USUAL_MOST, Math.round(engaged)));
  }

  /** Returns the same two with screw and nut changed over, without a word on play. */
  public Crossing turned() {
    return of(nut, screw);
  }
}
