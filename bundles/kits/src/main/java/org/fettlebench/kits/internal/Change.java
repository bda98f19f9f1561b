package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.kits.Fastener;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointCase;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.ScrewThread;

/**
 * What a substitute changes against the kit's fastener.
 *
 * @param rank how much
 * @param easy whether neither thread nor material changes
 * @param sameHead whether the head is the kit's
 * @param lengthDifference how much longer or shorter, without sign
 * @param words for people
 */
record Change(Rank rank, boolean easy, boolean sameHead, Length lengthDifference, String words) {
  /** From least to most. */
  enum Rank {
    /** The hexagon is smaller, nothing else. */
    SMALLER_HEAD,
    /** Another material. */
    MATERIAL,
    /** Another head. */
    OTHER_HEAD,
    /** Another length. */
    OTHER_LENGTH,
    /** Another thread of near size. */
    OTHER_THREAD
  }

  /** A thread is near when the diameters differ by no more than this part; common practice. */
  private static final double NEAR = 0.12;

  /** Returns the change; empty when the other is too far from the kit's to be put in its place. */
  static Optional<Change> of(JointCase joint, ScrewThread thread, Fastener other) {
    Fastener kits = joint.joint().fastener();
    if (kits.length().isPresent() != other.length().isPresent()) {
      return Optional.empty();
    }
    List<String> words = new ArrayList<>();
    Rank rank = Rank.MATERIAL;
    boolean material =
        !kits.material().isBlank() && !kits.material().equalsIgnoreCase(other.material());
    if (material) {
      words.add(
          other.material().isBlank()
              ? "material not said, where the kit has " + kits.material()
              : other.material() + " in place of " + kits.material());
    }
    if (!other.style().equals(kits.style())) {
      boolean smaller = other.style().equals("small-" + kits.style());
      rank = smaller ? Rank.SMALLER_HEAD : Rank.OTHER_HEAD;
      words.add(
          0,
          smaller
              ? "a hexagon one size smaller"
              : other.style().replace('-', ' ') + " in place of " + kits.style().replace('-', ' '));
    }
    if (!other.length().equals(kits.length())) {
      rank = Rank.OTHER_LENGTH;
      words.add(
          0,
          GoodsWords.size(other.length().orElseThrow())
              + " long in place of "
              + GoodsWords.size(kits.length().orElseThrow()));
    }
    if (!thread.designation().equals(joint.thread().designation())) {
      Optional<String> work = work(joint, thread);
      if (work.isEmpty() || !other.style().equals(kits.style()) || rank == Rank.OTHER_LENGTH) {
        return Optional.empty();
      }
      rank = Rank.OTHER_THREAD;
      words.add(0, work.get());
    }
    boolean sameHead = other.style().equals(kits.style());
    Length longer =
        other.length().orElse(Length.ZERO).minus(kits.length().orElse(Length.ZERO)).abs();
    return Optional.of(
        new Change(
            material && rank == Rank.SMALLER_HEAD ? Rank.MATERIAL : rank,
            !material && rank != Rank.OTHER_THREAD,
            sameHead,
            longer,
            String.join("; ", words)));
  }

  /** Returns what must be drilled and tapped anew for another thread; empty when it cannot be. */
  private static Optional<String> work(JointCase joint, ScrewThread thread) {
    double kits = joint.thread().major().millimetres();
    if (!(Math.abs(thread.major().millimetres() - kits) <= NEAR * kits)) {
      return Optional.empty();
    }
    List<String> work = new ArrayList<>();
    work.add(thread.designation() + " in place of " + joint.thread().designation());
    Optional<Joint.TappedHole> tapped = joint.joint().tapped();
    if (tapped.isPresent()) {
      work.add(
          tapped
              .get()
              .drilled()
              .map(hole -> tapDrilled(thread, hole))
              .orElse("tap it " + thread.designation() + " throughout"));
    }
    Optional<Length> passed = joint.joint().clearance().flatMap(Joint.ClearanceHole::drilled);
    if (passed.isPresent() && passed.get().compareTo(thread.major()) <= 0) {
      work.add("open the hole of " + Say.size(passed.get()) + " out, it does not pass");
    } else if (joint.joint().clearance().isPresent() && passed.isEmpty()) {
      work.add("drill the hole to pass for " + thread.designation());
    }
    double percent =
        tapped.flatMap(Joint.TappedHole::drilled).map(thread::percentOfThread).orElse(60.0);
    return percent >= TappingRule.LEAST_PERCENT
        ? Optional.of(String.join(", ", work))
        : Optional.empty();
  }

  private static String tapDrilled(ScrewThread thread, Length hole) {
    double percent = thread.percentOfThread(hole);
    return percent > TappingRule.MOST_PERCENT
        ? "open the hole already drilled, " + Say.size(hole) + ", out for " + thread.designation()
        : "the hole already drilled, "
            + Say.size(hole)
            + ", leaves "
            + Say.percent(percent)
            + " of it";
  }
}
