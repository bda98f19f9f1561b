package org.fettlebench.command.internal.seat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.HeadStyle;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.fits.Spanners;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.Threads;

/** Heads that could stand in for the one a seat file names. */
public final class OtherHeads {
  private final Threads threads;
  private final Heads heads;
  private final Spanners spanners;

  /** Takes the tables to look in. */
  public OtherHeads(Threads threads, Heads heads, Spanners spanners) {
    this.spanners = spanners;
    this.threads = threads;
    this.heads = heads;
  }

  /**
   * Returns other spanners for the same head, where one is asked for, and the smaller heads of the
   * same part (head or nut) for the thread that the head's title begins with, widest first; none
   * when it begins with no thread.
   */
  public List<SeatedHead> of(SeatedHead head) {
    List<SeatedHead> others = new ArrayList<>();
    head.spanner()
        .ifPresent(
            asked ->
                Arrays.stream(Spanner.Kind.values())
                    .filter(kind -> kind != asked.kind())
                    .flatMap(kind -> spanners.find(kind, head.acrossFlatsMm().orElse(1)).stream())
                    .forEach(spanner -> others.add(head.withSpanner(spanner))));
    thread(head.title()).ifPresent(thread -> others.addAll(smaller(head, thread)));
    return others;
  }

  /** Returns a head on the same washer, with room asked for the same kind of spanner. */
  private SeatedHead like(SeatedHead head, SeatedHead other) {
    SeatedHead seated = head.washer().isPresent() ? other.withWasher(head.washer().get()) : other;
    Optional<Spanner> spanner =
        other.acrossFlatsMm().isEmpty()
            ? Optional.empty()
            : head.spanner()
                .flatMap(asked -> spanners.find(asked.kind(), other.acrossFlatsMm().getAsDouble()));
    return spanner.isPresent() ? seated.withSpanner(spanner.get()) : seated;
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
        .filter(
            other -> other.sweepDiameterMm() < head.sweepDiameterMm() || head.spanner().isPresent())
        .filter(other -> !other.title().equals(head.title()))
        .filter(other -> head.spanner().isEmpty() || turnable(head, other))
        .map(other -> like(head, other))
        .sorted((a, b) -> Double.compare(b.sweepDiameterMm(), a.sweepDiameterMm()))
        .toList();
  }

  /** Returns whether what turns it is known, or it needs no spanner. */
  private boolean turnable(SeatedHead head, SeatedHead other) {
    return other.acrossFlatsMm().isEmpty()
        || spanners
            .find(head.spanner().orElseThrow().kind(), other.acrossFlatsMm().getAsDouble())
            .isPresent();
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
        millimetres(head.washerFace()),
        Optional.empty(),
        Optional.empty(),
        head.source().standing() == Standing.PUBLISHED ? "" : head.source().standing().words());
  }

  private static OptionalDouble millimetres(Optional<Length> length) {
    return length.isPresent()
        ? OptionalDouble.of(length.get().millimetres())
        : OptionalDouble.empty();
  }
}
