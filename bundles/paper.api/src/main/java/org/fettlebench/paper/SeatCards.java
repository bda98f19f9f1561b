package org.fettlebench.paper;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.stream.Stream;
import org.fettlebench.drawing.Drawing;
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

    /** Returns the same card with other lines before its own; blank ones are left out. */
    public Card after(List<String> first) {
      Stream<String> all = Stream.concat(first.stream(), lines.stream()).flatMap(String::lines);
      return new Card(title, what, verdict, drawing, all.filter(line -> !line.isBlank()).toList());
    }
  }
}
