package org.fettlebench.command.internal.seat;

import java.nio.file.Path;
import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.internal.PaperFile;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.SvgWriter;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatDrawings;
import org.fettlebench.paper.SeatCards;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/** Draws seats, and puts them on cards where something that prints is installed. */
@Component(service = SeatPapers.class)
public final class SeatPapers {
  static final String CARD = "--card";
  static final String SVG = "--svg";

  // Half an A4 sheet with its margins.
  private static final double WIDTH_MM = 180;
  private static final double HEIGHT_MM = 125;

  private final SeatDrawings drawings;
  private volatile Optional<SeatCards> cards = Optional.empty();

  /** Made by the framework. */
  @Activate
  public SeatPapers(@Reference SeatDrawings drawings) {
    this.drawings = drawings;
  }

  /** Takes what writes cards. */
  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  public void setCards(SeatCards service) {
    cards = Optional.of(service);
  }

  /** Lets it go, unless a newer one came before. */
  public void unsetCards(SeatCards service) {
    cards = cards.filter(now -> now != service);
  }

  /** Writes what is asked for, and returns what is to be said of it. */
  String write(Call call, SeatAnswer answer, SeatCards.Said said) {
    Optional<SeatCards> paper = call.option(CARD).map(file -> printer());
    if (paper.isEmpty() && call.option(SVG).isEmpty()) {
      return "";
    }
    Drawing drawing = drawings.draw(answer, said.rose(), call.unit());
    if (call.option(SVG).isPresent()) {
      PaperFile.write(call.file(SVG), SvgWriter.toScale(drawing, WIDTH_MM, HEIGHT_MM, call.unit()));
    }
    return paper
        .map(to -> card(call, to, SeatCards.Card.of(answer, drawing, said, call.unit())))
        .orElse("");
  }

  private SeatCards printer() {
    return cards.orElseThrow(
        () ->
            new CommandException(
                "nothing that puts a seat on paper is installed; see \"module list\""));
  }

  private static String card(Call call, SeatCards paper, SeatCards.Card card) {
    Path file = call.file(CARD);
    PaperFile.write(file, pdf -> paper.card(card, call.unit(), pdf));
    return "\nthe card is in " + file;
  }
}
