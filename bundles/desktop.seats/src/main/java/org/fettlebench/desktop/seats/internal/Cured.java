package org.fettlebench.desktop.seats.internal;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;

/** Makes a change out of a cure: what its question has otherwise, the sketch then has too. */
final class Cured {
  private final SeatBook book;

  Cured(SeatBook book) {
    this.book = book;
  }

  Change<Sketch> change(SeatCure cure) {
    return Change.of("cure applied: " + cure.sentence(), sketch -> apply(sketch, cure));
  }

  private Sketch apply(Sketch sketch, SeatCure cure) {
    SeatQuestion after = cure.after().question();
    Sketch changed = sketch;
    if (!after.seat().intended().equals(sketch.centre().orElse(after.seat().intended()))) {
      changed = changed.with(changed.hole().at(after.seat().intended()));
    }
    Optional<SeatedHead> head = book.head(sketch);
    if (head.filter(after.head()::equals).isEmpty()) {
      changed = changed.with(top(changed, after.head()));
    }
    double confidence = sketch.hole().confidence();
    Optional<String> method =
        book.methods().stream()
            .filter(each -> each.errorMeans(confidence).equals(after.errorMeans()))
            .map(each -> each.id())
            .findFirst();
    boolean other = method.isPresent() && !method.equals(book.method(sketch).map(m -> m.id()));
    return other ? changed.with(changed.hole().by(method.get())) : changed;
  }

  /** A listed head where one is meant; a head that is worked on is one as measured. */
  private Sketch.Top top(Sketch sketch, SeatedHead head) {
    Sketch.Top set =
        sketch.top().set(head.flatsAlongDegrees()).turnedBy(head.spanner()).on(head.washer());
    if (book.head(sketch.with(set)).filter(head::equals).isPresent()) {
      return set;
    }
    return book.thread(sketch.top().thread())
        .flatMap(
            thread ->
                book.heads().of(thread).stream()
                    .filter(
                        held ->
                            book.head(sketch.with(set.listed(set.thread(), held.head().style())))
                                .filter(head::equals)
                                .isPresent())
                    .findFirst())
        .map(held -> set.listed(set.thread(), held.head().style()))
        .orElseGet(() -> set.asMeasured(measured(head)));
  }

  private static Sketch.Measured measured(SeatedHead head) {
    return new Sketch.Measured(
        head.title(),
        head.acrossFlatsMm(),
        OptionalDouble.of(head.sweepDiameterMm()),
        head.heightMm());
  }
}
