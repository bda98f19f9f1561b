package org.fettlebench.kits.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.holes.patterns.HolePattern;
import org.fettlebench.kits.PatternFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;
import org.fettlebench.threads.ScrewThread;

/** Reads a pattern file: where holes should be in two parts, how they are placed or where found. */
final class PatternFileReader {
  private static final String MEASURED_FASTENER = "as measured";

  private final Trade trade;
  private final PatternPartReader parts;

  PatternFileReader(Trade trade, UnaryOperator<HoleMethod> asKnown) {
    this.trade = trade;
    this.parts = new PatternPartReader(trade, asKnown);
  }

  /** Returns what the file says; empty when faults were added. */
  Optional<PatternFile> read(Section file) {
    int before = file.reading().faults().size();
    file.required("pattern", "Begin the file with a line [pattern]");
    Optional<Section> section = file.table("pattern");
    section.ifPresent(file.reading()::unit);
    Optional<Head> head = section.flatMap(this::head);
    List<PatternFile.Part> both = both(file, head.flatMap(Head::wanted));
    file.done();
    if (file.reading().faults().size() > before || head.isEmpty() || both.size() != 2) {
      return Optional.empty();
    }
    return Optional.of(
        new PatternFile(
            head.get().name(),
            head.get().fastener(),
            head.get().diameter(),
            head.get().wanted(),
            both.get(0),
            both.get(1)));
  }

  /** What stands under [pattern]. */
  private record Head(
      String name, String fastener, Length diameter, Optional<HolePattern> wanted) {}

  private Optional<Head> head(Section section) {
    String name =
        section
            .requiredName("name", "Write what the trade calls it: name = \"cylinder cover\"")
            .orElse("");
    Optional<ScrewThread> thread =
        section.has("thread") || !section.has("fastener-diameter")
            ? new FastenerReader(trade).thread(section)
            : Optional.empty();
    Optional<Length> diameter =
        section.positive("fastener-diameter").or(() -> thread.map(ScrewThread::major));
    Optional<HolePattern> wanted = wanted(section, name);
    section.done();
    return diameter.map(
        size ->
            new Head(
                name,
                thread.map(ScrewThread::designation).orElse(MEASURED_FASTENER),
                size,
                wanted));
  }

  private static Optional<HolePattern> wanted(Section section, String name) {
    if (section.has("circle") && section.has("centres")) {
      section.fault("centres", "stand beside a circle", "Leave circle or centres out");
      return Optional.empty();
    }
    return section.has("circle") ? circle(section, name) : centres(section, name);
  }

  private static Optional<HolePattern> circle(Section section, String name) {
    Optional<Length> diameter = section.positive("circle");
    Optional<Integer> holes =
        section.requiredWhole("holes", 1, "Write how many stand on the circle: holes = 6");
    double first = section.number("first-degrees", -360, 360).orElse(0.0);
    if (holes.filter(count -> count > HolePattern.MOST).isPresent()) {
      section.fault(
          "holes",
          "are more than the " + HolePattern.MOST + " that a pattern may have",
          "Write how many stand on the circle");
      return Optional.empty();
    }
    return diameter.isPresent() && holes.isPresent()
        ? Optional.of(HolePattern.circle(name, diameter.get().millimetres(), holes.get(), first))
        : Optional.empty();
  }

  private static Optional<HolePattern> centres(Section section, String name) {
    Optional<List<Point>> centres = HolePlaces.read(section, "centres");
    if (centres.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(HolePattern.at(name, centres.get()));
    } catch (IllegalArgumentException refused) {
      section.fault("centres", "cannot be a pattern: " + refused.getMessage(), "Check the list");
      return Optional.empty();
    }
  }

  private List<PatternFile.Part> both(Section file, Optional<HolePattern> wanted) {
    List<Section> sections = file.tables("part");
    if (sections.size() != 2) {
      file.reading()
          .faults()
          .addMissing(
              file.at(),
              "the file has " + sections.size() + " [[part]], not 2",
              "Write two: first the part on top, then the one below");
    }
    List<PatternFile.Part> both =
        sections.stream()
            .map(section -> parts.read(section, wanted))
            .flatMap(Optional::stream)
            .toList();
    if (both.size() == 2 && both.get(0).tapped() && both.get(1).tapped()) {
      sections
          .get(1)
          .fault("tapped", "holds of both parts", "One of the two must pass the fastener");
    }
    if (both.size() == 2 && differ(both.get(0), both.get(1))) {
      sections
          .get(1)
          .fault(
              "measured",
              "does not have the "
                  + both.get(0).measured().size()
                  + " holes of "
                  + both.get(0).name(),
              "Measure the same holes in both parts, in the same order as seen from above");
    }
    return both;
  }

  private static boolean differ(PatternFile.Part one, PatternFile.Part other) {
    return !one.measured().isEmpty()
        && !other.measured().isEmpty()
        && one.measured().size() != other.measured().size();
  }
}
