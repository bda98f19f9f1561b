package org.fettlebench.command.internal.head;

import java.util.List;
import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.thread.ThreadWords;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fasteners.scale.ScaleLook;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.Threads;

/** The full-size head that a model's stands for: as named, or the nearest of a series. */
record FullSize(Threads threads, Heads heads) {
  /**
   * Returns the head.
   *
   * @throws CommandException if no table has one, or none of the series is near in diameter
   */
  Head of(Call call, ScrewThread model, double oneTo) {
    if (call.option("--full").isPresent() && call.option("--series").isPresent()) {
      throw new CommandException("say --full or --series, not both: --full names one thread");
    }
    String style = call.option("--style").orElse("hexagon").strip().replace(' ', '-');
    Optional<ScrewThread> named =
        call.option("--full").map(typed -> ThreadWords.one(threads, typed));
    if (named.isPresent()) {
      return nearest(model, oneTo, List.of(named.get()), style)
          .orElseThrow(() -> none(style, named.get().designation()));
    }
    String series = call.option("--series").orElse("BSW");
    Head head =
        nearest(model, oneTo, series(series), style).orElseThrow(() -> none(style, "that series"));
    checkNear(call, model, oneTo, head);
    return head;
  }

  private Optional<Head> nearest(
      ScrewThread model, double oneTo, List<ScrewThread> among, String style) {
    return ScaleLook.fullSize(model, oneTo, among, thread -> heads.find(style, thread));
  }

  /** Refuses the end of a series that is a long way off what the model stands for. */
  private void checkNear(Call call, ScrewThread model, double oneTo, Head head) {
    double wantedMm = model.major().millimetres() * oneTo;
    double fullMm = threads.find(head.thread()).orElseThrow().major().millimetres();
    if (!(Math.abs(fullMm / wantedMm - 1) <= HeadScale.NEAR)) {
      LengthUnit unit = call.unit();
      throw new CommandException(
          "%s at 1:%s stands for %s; the nearest %s listed for it is %s, %s in diameter. Say --full or another --series, or check --scale"
              .formatted(
                  model.designation(),
                  call.option("--scale").orElseThrow().strip().replaceFirst("^1\\s*[:/]\\s*", ""),
                  Figures.size(wantedMm, unit),
                  head.style(),
                  head.thread(),
                  Figures.size(fullMm, unit)));
    }
  }

  private static CommandException none(String style, String among) {
    return new CommandException(
        "no table has a \"%s\" with flats for %s; \"head show\" lists what there is"
            .formatted(style, among));
  }

  private List<ScrewThread> series(String id) {
    return threads.series().stream()
        .filter(series -> series.id().equalsIgnoreCase(id))
        .findFirst()
        .orElseThrow(
            () ->
                new CommandException(
                    "there is no series \"" + id + "\"; \"thread list\" shows the series"))
        .threads();
  }
}
