package org.fettlebench.kits.internal;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.Spanners;
import org.fettlebench.kits.Fastener;
import org.fettlebench.kits.Joint;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.ClearanceFit;
import org.fettlebench.tooling.TapLead;

/** Reads the joints of a kit file. */
final class JointReader {
  private final Trade trade;
  private final Spanners spanners;
  private final FastenerReader fasteners;
  private final Map<String, Seat> seats;
  private final List<String> seatNames;
  private final Map<String, Integer> lineOfName = new HashMap<>();

  /**
   * @param seats those that could be read
   * @param seatNames names of all seats of the file
   */
  JointReader(Trade trade, Spanners spanners, Map<String, Seat> seats, List<String> seatNames) {
    this.trade = trade;
    this.spanners = spanners;
    this.fasteners = new FastenerReader(trade);
    this.seats = Map.copyOf(seats);
    this.seatNames = List.copyOf(seatNames);
  }

  /** Returns the joint; when anything was wrong with it, a fault was added. */
  Optional<Joint> read(Section section) {
    int before = section.reading().faults().size();
    String name = name(section);
    String part = section.oneLine("part").orElse("");
    int count = section.requiredWhole("count", 1, "Write how many fasteners: count = 4").orElse(1);
    Optional<Fastener> fastener = fasteners.read(section);
    Optional<Joint.ClearanceHole> clearance = section.table("clearance").flatMap(this::clearance);
    Optional<Joint.TappedHole> tapped = section.table("tapped").flatMap(this::tapped);
    holes(section);
    Optional<Seat> seat = seat(section);
    Optional<String> method = method(section);
    Joint.Dress dress = fastener.map(each -> dress(section, each)).orElse(Joint.Dress.NONE);
    boolean pressure = section.flag("holds-pressure").orElse(false);
    String note = section.text("note").orElse("");
    section.done();
    if (section.reading().faults().size() > before || fastener.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Joint(
            name,
            part,
            count,
            fastener.get(),
            clearance,
            tapped,
            seat,
            method,
            pressure,
            note,
            section.at().line(),
            dress));
  }

  /** Reads what goes with the head; a stud's is its nut. */
  private Joint.Dress dress(Section section, Fastener fastener) {
    if (!section.has("washer") && !section.has("spanner")) {
      return Joint.Dress.NONE;
    }
    Optional<ScrewThread> thread = trade.threads().find(fastener.thread());
    OptionalDouble flats =
        SeatFileReader.optional(
            thread.flatMap(known -> trade.seatedHead(fastener, known)).flatMap(Head::acrossFlats));
    HeadParts parts = new HeadParts(trade, spanners, section);
    return new Joint.Dress(parts.washer(thread), parts.spanner(flats));
  }

  private String name(Section section) {
    String name =
        section.requiredName("name", "Write what the trade calls it: name = \"gland\"").orElse("");
    Integer other = lineOfName.putIfAbsent(name, section.at().line());
    if (other != null && !name.isEmpty()) {
      section.fault(
          "name",
          "is the name of the joint at line " + other + " already",
          "Give each joint a name of its own");
    }
    return name;
  }

  private static void holes(Section section) {
    if (!section.has("clearance") && !section.has("tapped")) {
      section
          .reading()
          .faults()
          .addMissing(
              section.at(),
              section.title() + " has neither a clearance nor a tapped hole",
              "Say what the fastener passes through or screws into:"
                  + " clearance = { fit = \"close\" } or tapped = { ... }");
    }
  }

  private Optional<Joint.ClearanceHole> clearance(Section hole) {
    Optional<ClearanceFit> fit =
        oneOf(hole, "fit", ClearanceFit.values(), "Write fit = \"close\", \"medium\" or \"free\"");
    Optional<Length> depth = hole.positive("depth");
    Optional<Length> drilled = DrilledSize.read(hole, "drilled", trade.drills());
    hole.done();
    return fit.map(value -> new Joint.ClearanceHole(value, depth, drilled));
  }

  private Optional<Joint.TappedHole> tapped(Section hole) {
    Optional<String> material = hole.requiredText("material", "Write material = \"cast iron\"");
    Optional<Length> full =
        hole.requiredPositive(
            "full-thread", "Write the depth of full thread: full-thread = \"8 mm\"");
    Optional<Length> metal = hole.positive("metal");
    Optional<TapLead> lead = lead(hole);
    Optional<Double> percent = hole.number("percent", 0, 100);
    Optional<Length> drilled = DrilledSize.read(hole, "drilled", trade.drills());
    hole.done();
    return material.isPresent() && full.isPresent() && lead.isPresent()
        ? Optional.of(
            new Joint.TappedHole(material.get(), full.get(), metal, lead.get(), percent, drilled))
        : Optional.empty();
  }

  /** In a through hole the lead does not matter; in a blind one it must be said. */
  private static Optional<TapLead> lead(Section hole) {
    if (!hole.has("lead") && !hole.has("metal")) {
      return Optional.of(TapLead.SECOND);
    }
    return oneOf(
        hole,
        "lead",
        TapLead.values(),
        "A blind hole needs the last tap that goes in: lead = \"taper\", \"second\" or"
            + " \"bottoming\"");
  }

  private static <E extends Enum<E>> Optional<E> oneOf(
      Section section, String key, E[] values, String remedy) {
    Optional<String> word = section.requiredText(key, remedy);
    Optional<E> value =
        Arrays.stream(values)
            .filter(each -> word.filter(each.name().toLowerCase(Locale.ROOT)::equals).isPresent())
            .findFirst();
    if (word.isPresent() && value.isEmpty()) {
      String known =
          Arrays.stream(values)
              .map(each -> each.name().toLowerCase(Locale.ROOT))
              .collect(Collectors.joining(", "));
      section.fault(key, "is no " + key + " of a hole", "Known are " + known);
    }
    return value;
  }

  private Optional<Seat> seat(Section section) {
    Optional<String> name = section.text("seat");
    if (name.isPresent() && !seatNames.contains(name.get())) {
      section.fault(
          "seat",
          "is no seat of this file",
          Nearest.to(name.get(), seatNames)
              .map(near -> "Did you mean \"" + near + "\"?")
              .orElse(
                  seatNames.isEmpty()
                      ? "Describe it in a [[seat]] of that name"
                      : "Seats are " + String.join(", ", seatNames)));
    }
    if (name.isPresent() && !section.has("method")) {
      section
          .reading()
          .faults()
          .addMissing(
              section.at(),
              section.title() + " has a seat but no method",
              "Say how the hole will be placed: method = one of " + methodIds());
    }
    return name.map(seats::get);
  }

  private Optional<String> method(Section section) {
    Optional<String> id = section.text("method");
    if (id.isPresent() && trade.methods().find(id.get()).isEmpty()) {
      section.fault("method", "is no known way of placing a hole", "Known are " + methodIds());
    }
    return id;
  }

  private String methodIds() {
    return trade.methods().methods().stream().map(HoleMethod::id).collect(Collectors.joining(", "));
  }
}
