package org.fettlebench.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.fits.Reach;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.fits.Verdict;
import org.fettlebench.measure.LengthUnit;
import org.osgi.annotation.versioning.ProviderType;

/** Puts a single seat on a card for the bench: one page A4, as PDF. */
@ProviderType
public interface SeatCards {
  /**
   * Writes the card.
   *
   * @param card what stands on it
   * @param first unit of the line to measure after printing
   * @param pdf takes the bytes; is not closed
   * @throws IOException if the stream cannot take them
   */
  void card(Card card, LengthUnit first, OutputStream pdf) throws IOException;

  /** More cures than this are for the screen. */
  int MOST_CURES = 3;

  /**
   * What is known beside the answer.
   *
   * @param chance that a hole so placed will do, from 0 to 1; empty when not known
   * @param rose how far the hole may be out each way; may be empty
   * @param cures best first; may be empty
   */
  record Said(OptionalDouble chance, List<Reach> rose, List<SeatCure> cures) {
    /** Copies what could change. */
    public Said {
      rose = List.copyOf(rose);
      cures = List.copyOf(cures);
    }
  }

  /**
   * What stands on a card.
   *
   * @param title name of the seat
   * @param what what sits on it
   * @param verdict whether it does
   * @param drawing to scale
   * @param lines what is to be known, the most important first
   */
  record Card(String title, String what, Verdict verdict, Drawing drawing, List<String> lines) {
    /** Copies what could change. */
    public Card {
      lines = List.copyOf(lines);
    }

    /**
     * Makes the card of an answer: what {@link SeatWords} says of it, then its cures.
     *
     * @param drawing of the answer, to scale
     * @param said what is known beside the answer itself
     * @param unit shown first
     */
    public static Card of(SeatAnswer answer, Drawing drawing, Said said, LengthUnit unit) {
      List<String> lines =
          new ArrayList<>(SeatWords.lines(answer, said.chance(), said.rose(), unit));
      said.cures().stream()
          .limit(MOST_CURES)
          .forEach(cure -> lines.add("Cure: " + SeatWords.cure(cure, unit)));
      return new Card(
          answer.question().seat().name(),
          answer.question().head().title(),
          answer.verdict(),
          drawing,
          lines.subList(1, lines.size()));
    }

    /** Returns the same card with other lines before its own; blank ones are left out. */
    public Card after(List<String> first) {
      Stream<String> all = Stream.concat(first.stream(), lines.stream()).flatMap(String::lines);
      return new Card(title, what, verdict, drawing, all.filter(line -> !line.isBlank()).toList());
    }
  }
}
