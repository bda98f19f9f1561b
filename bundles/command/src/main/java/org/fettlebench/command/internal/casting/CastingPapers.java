package org.fettlebench.command.internal.casting;

import java.nio.file.Path;
import java.util.Optional;
import org.fettlebench.castings.Placing;
import org.fettlebench.command.Call;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.internal.PaperFile;
import org.fettlebench.paper.CastingCards;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/** Writes cards about castings, where something that prints is installed. */
@Component(service = CastingPapers.class)
public final class CastingPapers {
  static final String CARD = "--card";

  private volatile Optional<CastingCards> cards = Optional.empty();

  /** Takes what writes cards. */
  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  public void setCards(CastingCards service) {
    cards = Optional.of(service);
  }

  /** Lets it go, unless a newer one came before. */
  public void unsetCards(CastingCards service) {
    cards = cards.filter(now -> now != service);
  }

  /** Writes the marking-out card where one is asked for, and says where it is. */
  Optional<String> card(Call call, Placing placing, boolean holdsPressure) {
    if (call.option(CARD).isEmpty()) {
      return Optional.empty();
    }
    CastingCards paper =
        cards.orElseThrow(
            () ->
                new CommandException(
                    "nothing that puts a casting on paper is installed; see \"module list\""));
    Path file = call.file(CARD);
    PaperFile.write(file, pdf -> paper.card(placing, holdsPressure, call.unit(), pdf));
    return Optional.of("the card is in " + file);
  }
}
