package org.fettlebench.command.internal.holeplace;

import java.nio.file.Path;
import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.internal.PaperFile;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.otherface.FaceMark;
import org.fettlebench.paper.HoleCards;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/** Writes cards about holes, where something that prints is installed. */
@Component(service = PlacePapers.class)
public final class PlacePapers {
  static final String CARD = "--card";
  static final String SVG = "--svg";

  private volatile Optional<HoleCards> cards = Optional.empty();

  /** Takes what writes cards. */
  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  public void setCards(HoleCards service) {
    cards = Optional.of(service);
  }

  /** Lets it go, unless a newer one came before. */
  public void unsetCards(HoleCards service) {
    cards = cards.filter(now -> now != service);
  }

  Optional<String> correction(Call call, String name, CorrectionAnswer answer) {
    return file(
        call,
        (paper, file) ->
            PaperFile.write(file, pdf -> paper.correctionCard(name, answer, call.unit(), pdf)));
  }

  Optional<String> marking(Call call, FaceMark mark) {
    return file(
        call,
        (paper, file) -> PaperFile.write(file, pdf -> paper.markingCard(mark, call.unit(), pdf)));
  }

  /** What writes a card to a file. */
  private interface Writing {
    void to(HoleCards paper, Path file);
  }

  private Optional<String> file(Call call, Writing writing) {
    if (call.option(CARD).isEmpty()) {
      return Optional.empty();
    }
    HoleCards paper =
        cards.orElseThrow(
            () ->
                new CommandException(
                    "nothing that puts a hole on paper is installed; see \"module list\""));
    Path file = call.file(CARD);
    writing.to(paper, file);
    return Optional.of("the card is in " + file);
  }
}
