package org.fettlebench.command.internal.seat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.HeadStyle;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.Threads;

/** Heads that could stand in for the one a seat file names. */
final class OtherHeads {
  private final Threads threads;
  private final Heads heads;

  OtherHeads(Threads threads, Heads heads) {
    this.threads = threads;
    this.heads = heads;
  }

  /**
   * Returns the smaller heads of the same part (head or nut) for the thread that the head's title
   * begins with, widest first; none when it begins with no thread.
   */
  List<SeatedHead> of(SeatedHead head) {
    return thread(head.title()).map(thread -> smaller(head, thread)).orElse(List.of());
  }

  private Optional<ScrewThread> thread(String title) {
    String words = title;
    while (!words.isEmpty()) {
      Optional<ScrewThread> found = threads.find(words);
      if (found.isPresent()) {
        return found;
      }
      words = words.contains(" ") ? words.substring(0, words.lastIndexOf(' ')) : "";
    }
    return Optional.empty();
  }

  private List<SeatedHead> smaller(SeatedHead head, ScrewThread thread) {
    HeadStyle.Part part = head.title().contains("nut") ? HeadStyle.Part.NUT : HeadStyle.Part.HEAD;
    return heads.forThread(thread).stream()
        .filter(other -> part(other).filter(part::equals).isPresent())
        // A countersunk head bears on a cone, not on the seat.
        .filter(other -> other.countersunkDegrees().isEmpty())
        .map(OtherHeads::seated)
        .filter(other -> other.sweepDiameterMm() < head.sweepDiameterMm())
        .sorted((a, b) -> Double.compare(b.sweepDiameterMm(), a.sweepDiameterMm()))
        .toList();
  }

  private Optional<HeadStyle.Part> part(Head head) {
    return heads.styles().stream()
        .filter(style -> style.id().equals(head.style()))
        .map(HeadStyle::part)
        .findFirst();
  }

  private static SeatedHead seated(Head head) {
    return new SeatedHead(
        head.title(),
        head.acrossCorners().millimetres(),
        millimetres(head.acrossFlats()),
        millimetres(head.height()),
        OptionalDouble.empty(),
        head.source().standing() == Standing.PUBLISHED ? "" : head.source().standing().words());
  }

  private static OptionalDouble millimetres(Optional<Length> length) {
    return length.isPresent()
        ? OptionalDouble.of(length.get().millimetres())
        : OptionalDouble.empty();
  }
}
