package org.fettlebench.desktop.seats.internal;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.club.KitShelf;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.KitFiles;

/** Finds the seat of a joint in a kit on the shelf. */
final class Joints {
  private static final String JOINT = "joint:";

  private final KitFiles files;
  private final KitShelf shelf;

  Joints(KitFiles files, KitShelf shelf) {
    this.files = files;
    this.shelf = shelf;
  }

  /**
   * Which joint is wanted.
   *
   * @param kit its kit; empty when none
   * @param joint its name; empty when none
   */
  record Wanted(String kit, String joint) {}

  /** Reads the key {@code joint:KIT/JOINT}. */
  static Wanted wanted(String key) {
    int slash = key.lastIndexOf('/');
    return key.startsWith(JOINT) && slash > 0
        ? new Wanted(key.substring(JOINT.length(), slash), key.substring(slash + 1))
        : new Wanted("", "");
  }

  /** Returns the sketch of a joint's seat; empty when there is none. */
  Optional<Sketch> sketch(Wanted wanted) {
    return shelf
        .kit(wanted.kit())
        .map(kept -> files.readKit(kept.name(), kept.text()))
        .flatMap(
            kit ->
                kit.joints().stream()
                    .filter(joint -> joint.name().equals(wanted.joint()))
                    .findFirst()
                    .flatMap(joint -> sketch(kit, joint)));
  }

  private static Optional<Sketch> sketch(Kit kit, Joint joint) {
    return joint
        .seat()
        .map(
            seat -> {
              Sketch sketch = SeatText.sketch(seat);
              String style =
                  joint.fastener().style().equals("stud")
                      ? "hexagon-nut"
                      : joint.fastener().style();
              OptionalDouble drilled =
                  joint
                      .clearance()
                      .flatMap(Joint.ClearanceHole::drilled)
                      .map(size -> OptionalDouble.of(size.millimetres()))
                      .orElse(OptionalDouble.empty());
              return sketch
                  .withName(joint.name())
                  .with(sketch.top().listed(joint.fastener().thread(), style))
                  .with(
                      sketch
                          .hole()
                          .sized(drilled)
                          .by(joint.method().orElse(""))
                          .asking(kit.confidence()));
            });
  }
}
