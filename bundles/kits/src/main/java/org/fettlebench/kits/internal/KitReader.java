package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.Spanners;
import org.fettlebench.kits.Fastener;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.Kit;

/** Reads a kit file's tables into a kit. */
final class KitReader {
  /** Asked when a file does not say: 19 holes in 20. Stated in the page on file formats. */
  static final double USUAL_CONFIDENCE = 0.95;

  private final Trade trade;
  private final Spanners spanners;

  KitReader(Trade trade, Spanners spanners) {
    this.trade = trade;
    this.spanners = spanners;
  }

  /** Returns the kit; empty when faults were added. */
  Optional<Kit> read(Section file) {
    file.required("kit", "Begin the file with a line [kit]");
    Optional<Section> head = file.table("kit");
    head.ifPresent(file.reading()::unit);
    String name =
        head.flatMap(kit -> kit.requiredName("name", "Write name = \"bench pump\"")).orElse("");
    Optional<Integer> scale = head.flatMap(KitReader::scale);
    double confidence = head.flatMap(KitReader::confidence).orElse(USUAL_CONFIDENCE);
    head.ifPresent(Section::done);
    List<String> seats = new ArrayList<>();
    List<Joint> joints = joints(file, seats);
    List<String> idle =
        seats.stream()
            .filter(seat -> joints.stream().noneMatch(joint -> sitsOn(joint, seat)))
            .toList();
    List<Kit.BagLine> bag =
        file.tables("bag").stream().map(this::bagLine).flatMap(Optional::stream).toList();
    file.done();
    return file.reading().faults().isEmpty()
        ? Optional.of(new Kit(name, scale, confidence, joints, bag, idle))
        : Optional.empty();
  }

  private static boolean sitsOn(Joint joint, String seat) {
    return joint.seat().filter(used -> used.name().equals(seat)).isPresent();
  }

  private List<Joint> joints(Section file, List<String> names) {
    Map<String, Seat> seats = new HashMap<>();
    SeatReader seatReader = new SeatReader(trade.seats());
    for (Section section : file.tables("seat")) {
      Optional<Seat> seat = seatReader.read(section);
      section
          .value("name")
          .filter(String.class::isInstance)
          .ifPresent(
              value -> {
                String name = ((String) value).strip();
                if (names.contains(name)) {
                  section.fault(
                      "name", "is the name of another seat already", "Give each its own name");
                }
                names.add(name);
                seat.ifPresent(read -> seats.putIfAbsent(name, read));
              });
    }
    file.required("joint", "Describe each joint under a line [[joint]]");
    JointReader reader = new JointReader(trade, spanners, seats, names);
    return file.tables("joint").stream().map(reader::read).flatMap(Optional::stream).toList();
  }

  private Optional<Kit.BagLine> bagLine(Section line) {
    Optional<Fastener> fastener = new FastenerReader(trade).read(line);
    Optional<Integer> listed =
        line.requiredWhole("listed", 0, "Write how many the kit's list promises: listed = 8");
    Optional<Integer> counted = line.whole("counted", 0);
    line.done();
    return fastener.isPresent() && listed.isPresent()
        ? Optional.of(new Kit.BagLine(fastener.get(), listed.get(), counted))
        : Optional.empty();
  }

  /** Reads 8 and "1:8". */
  private static Optional<Integer> scale(Section kit) {
    Optional<Object> value = kit.value("scale");
    if (value.isPresent() && value.get() instanceof String text) {
      if (text.strip().matches("1:[1-9]\\d{0,3}")) {
        return Optional.of(Integer.valueOf(text.strip().substring(2)));
      }
      kit.fault("scale", "is no scale", "Write scale = 8 or scale = \"1:8\"");
      return Optional.empty();
    }
    return kit.whole("scale", 1);
  }

  static Optional<Double> confidence(Section section) {
    Optional<Object> value = section.value("confidence");
    if (value.isEmpty()) {
      return Optional.empty();
    }
    double chance = value.get() instanceof Number number ? number.doubleValue() : Double.NaN;
    if (chance > 0 && chance < 1) {
      return Optional.of(chance);
    }
    if (chance == 1) {
      section.fault(
          "confidence",
          "is certainty, which no way of placing a hole gives",
          "Write a chance below 1, such as 0.95");
    } else {
      section.fault(
          "confidence",
          "confidence must be a number above 0 and below 1",
          chance >= 10 && chance < 100
              ? "For " + Expected.percent(chance / 100) + " write " + chance / 100
              : "Write it without quotes, such as confidence = 0.95");
    }
    return Optional.empty();
  }
}
