package org.fettlebench.desktop.seats.internal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.function.Supplier;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatDrawings;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.fits.Verdict;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.otherface.FaceMark;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.paper.HoleCards;
import org.fettlebench.paper.SeatCards;

/** Chooses the card that the work in hand is in need of, and makes it off the window's thread. */
final class Papers {
  private final SeatBook book;
  private final Drawn drawn;
  private final SeatDrawings drawings;
  private final Supplier<Optional<SeatCards>> seatCards;
  private final Supplier<Optional<HoleCards>> holeCards;

  Papers(
      SeatBook book,
      Drawn drawn,
      SeatDrawings drawings,
      Supplier<Optional<SeatCards>> seatCards,
      Supplier<Optional<HoleCards>> holeCards) {
    this.book = book;
    this.drawn = drawn;
    this.drawings = drawings;
    this.seatCards = seatCards;
    this.holeCards = holeCards;
  }

  /**
   * A card to be made.
   *
   * @param name what it is called
   * @param ending what is put after the seat's name to name its file
   * @param bytes makes it; touches no control
   */
  record Card(String name, String ending, Callable<byte[]> bytes) {}

  /** What writes a card. */
  private interface Writing {
    void to(OutputStream pdf) throws IOException;
  }

  /** Returns what is wanted: how to mark, how to correct, or whether the head sits. */
  Optional<Card> card(Sketch sketch, SeatAnswer answer, ViewChoice view, LengthUnit unit) {
    if (view == ViewChoice.OTHER_FACE) {
      Optional<FaceMark> mark = drawn.marked(sketch, answer).flatMap(OtherFace.Marked::mark);
      return mark.flatMap(
          each ->
              hole(
                  "the marking-out card",
                  "-marking",
                  cards -> pdf -> cards.markingCard(each, unit, pdf)));
    }
    Optional<CorrectionAnswer> said = drawn.advice(sketch, answer).flatMap(Mending.Advice::answer);
    String name = answer.question().seat().name();
    Optional<Card> correction =
        said.flatMap(
            each ->
                hole(
                    "the correction card",
                    "-correction",
                    cards -> pdf -> cards.correctionCard(name, each, unit, pdf)));
    return correction.isPresent() ? correction : seat(sketch, answer, unit);
  }

  private Optional<Card> hole(String name, String ending, Function<HoleCards, Writing> writing) {
    return holeCards.get().map(cards -> new Card(name, ending, () -> bytes(writing.apply(cards))));
  }

  private Optional<Card> seat(Sketch sketch, SeatAnswer answer, LengthUnit unit) {
    return seatCards
        .get()
        .map(
            cards ->
                new Card(
                    "the seat's card",
                    "",
                    () -> {
                      SeatCards.Said said = said(sketch, answer);
                      Drawing drawing = drawings.draw(answer, said.rose(), unit);
                      SeatCards.Card card = SeatCards.Card.of(answer, drawing, said, unit);
                      return bytes(pdf -> cards.card(card, unit, pdf));
                    }));
  }

  private SeatCards.Said said(Sketch sketch, SeatAnswer answer) {
    List<SeatCure> cures =
        answer.verdict() == Verdict.CLEARS ? List.of() : book.cures(sketch, answer);
    return new SeatCards.Said(book.chance(sketch, answer), book.rose(answer), cures);
  }

  private static byte[] bytes(Writing writing) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    writing.to(bytes);
    return bytes.toByteArray();
  }

  /** Returns the answer and its figures as text. */
  String text(Sketch sketch, SeatAnswer answer, LengthUnit unit) {
    return String.join(
        "\n", SeatWords.lines(answer, book.chance(sketch, answer), book.rose(answer), unit));
  }
}
