package org.fettlebench.fasteners.scale;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fettlebench.fasteners.Head;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;

/**
 * A model's hexagon against the full-size one that it stands for.
 *
 * @param head of the model; it has flats
 * @param full the full-size head; it has flats
 * @param oneTo n of the scale 1:n
 * @param standsFor full-size across flats that the model's head stands for: n times its own
 * @param scaled what the model's head should measure across flats: the full-size one over n
 * @param overPercent by how much it is over scale; negative when under
 */
public record ScaleLook(
    Head head, Head full, double oneTo, Length standsFor, Length scaled, double overPercent) {

  /**
   * Compares two heads.
   *
   * @throws MeasureException if the scale is not from 1 to 1000 or a head has no flats
   */
  public static ScaleLook of(Head head, Head full, double oneTo) {
    if (!(oneTo >= 1 && oneTo <= 1000)) {
      throw new MeasureException("scale 1:" + oneTo + " is outside 1:1 to 1:1000");
    }
    double flats = flats(head).millimetres();
    double wanted = flats(full).millimetres() / oneTo;
    return new ScaleLook(
        head,
        full,
        oneTo,
        Length.ofMillimetres(flats * oneTo),
        Length.ofMillimetres(wanted),
        100 * (flats / wanted - 1));
  }

  private static Length flats(Head head) {
    return head.acrossFlats()
        .orElseThrow(() -> new MeasureException(head.title() + " has no flats to compare"));
  }

  /** Returns all heads that have flats against a full-size one, nearest to scale first. */
  public static List<ScaleLook> ranked(Collection<Head> heads, Head full, double oneTo) {
    return heads.stream()
        .filter(head -> head.acrossFlats().isPresent())
        .map(head -> of(head, full, oneTo))
        .sorted(Comparator.comparingDouble(look -> Math.abs(look.overPercent())))
        .toList();
  }

  /**
   * Finds the full-size thread whose diameter is nearest to a model thread's scaled up, among those
   * that have a head; of two as near the first.
   *
   * @param head the head of a thread, if any table lists one
   */
  public static Optional<Head> fullSize(
      ScrewThread model,
      double oneTo,
      Collection<ScrewThread> among,
      Function<ScrewThread, Optional<Head>> head) {
    double wanted = model.major().millimetres() * oneTo;
    return among.stream()
        .filter(thread -> head.apply(thread).flatMap(Head::acrossFlats).isPresent())
        .min(Comparator.comparingDouble(thread -> Math.abs(thread.major().millimetres() - wanted)))
        .flatMap(head);
  }
}
