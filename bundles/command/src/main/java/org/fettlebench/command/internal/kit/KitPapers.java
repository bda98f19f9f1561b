package org.fettlebench.command.internal.kit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.internal.PaperFile;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.KitReport;
import org.fettlebench.paper.BenchCards;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/** Puts a checked kit on paper, where something that prints is installed. */
@Component(service = KitPapers.class)
public final class KitPapers {
  static final String CARD = "--card";
  static final String REPORT = "--report";

  private volatile Optional<BenchCards> cards = Optional.empty();

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setCards(BenchCards service) {
    cards = Optional.of(service);
  }

  void unsetCards(BenchCards service) {
    // The newer one may have been set before the older one is taken away.
    cards = cards.filter(now -> now != service);
  }

  static boolean asked(Call call) {
    return call.option(CARD).isPresent() || call.option(REPORT).isPresent();
  }

  /**
   * Writes the papers asked for: the card of the one joint chosen, the report of the whole kit.
   *
   * @param joints the joints chosen
   * @return what was written, in a line each
   * @throws CommandException if nothing prints, no joint was said for a card, or a file cannot be
   *     written
   */
  List<String> write(Call call, KitReport whole, List<JointReport> joints) {
    if (!asked(call)) {
      return List.of();
    }
    BenchCards paper =
        cards.orElseThrow(
            () ->
                new CommandException(
                    "nothing that puts a kit on paper is installed; see \"module list\""));
    if (call.option(CARD).isPresent() && call.option("--joint").isEmpty()) {
      throw new CommandException(
          "a bench card is of one joint; add --joint NAME, or say --report for the whole kit");
    }
    List<String> written = new ArrayList<>();
    if (call.option(CARD).isPresent()) {
      Path file = call.file(CARD);
      JointReport joint = joints.get(0);
      PaperFile.write(file, pdf -> paper.jointCard(whole, joint, call.unit(), pdf));
      written.add("the bench card of " + joint.joint().name() + " is in " + file);
    }
    if (call.option(REPORT).isPresent()) {
      Path file = call.file(REPORT);
      PaperFile.write(file, pdf -> paper.kitReport(whole, call.unit(), pdf));
      written.add("the report of " + whole.kit().name() + " is in " + file);
    }
    return written;
  }
}
