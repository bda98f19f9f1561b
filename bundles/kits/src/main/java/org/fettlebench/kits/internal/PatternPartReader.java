package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.holes.patterns.HolePattern;
import org.fettlebench.holes.patterns.MeasuredPattern.Hole;
import org.fettlebench.holes.patterns.PlacingLaw;
import org.fettlebench.kits.PatternFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.tomlj.TomlArray;

/** Reads a part of a pattern file. */
final class PatternPartReader {
  private static final Source OWN = new Source("the pattern file", Standing.MEASURED);
  private static final List<String> SIDES = List.of("above", "below");

  private final Trade trade;
  private final UnaryOperator<HoleMethod> asKnown;

  PatternPartReader(Trade trade, UnaryOperator<HoleMethod> asKnown) {
    this.trade = trade;
    this.asKnown = asKnown;
  }

  Optional<PatternFile.Part> read(Section section, Optional<HolePattern> wanted) {
    int before = section.reading().faults().size();
    Optional<String> name = section.requiredName("name", "Write for instance name = \"cover\"");
    boolean tapped = section.flag("tapped").orElse(false);
    Optional<Length> hole = DrilledSize.read(section, "hole", trade.drills());
    if (tapped && hole.isPresent()) {
      section.fault("hole", "stands beside tapped = true", "Leave one of the two out");
    }
    Optional<PlacingLaw> placing = placing(section);
    Optional<PlacingLaw> leaning = leaning(section, tapped);
    List<Hole> measured = measured(section, tapped, hole);
    wanted
        .filter(pattern -> !measured.isEmpty() && pattern.centres().size() != measured.size())
        .ifPresent(
            pattern ->
                section.fault(
                    "measured",
                    "does not have the " + pattern.centres().size() + " holes of the pattern",
                    "Measure every hole, in the order of the pattern"));
    section.done();
    return section.reading().faults().size() > before || name.isEmpty()
        ? Optional.empty()
        : Optional.of(new PatternFile.Part(name.get(), tapped, hole, placing, leaning, measured));
  }

  private Optional<PlacingLaw> placing(Section section) {
    Optional<PlacingLaw> method = section.text("method").flatMap(id -> method(section, id));
    Optional<PlacingLaw> sigma =
        section
            .positive("sigma")
            .map(size -> PlacingLaw.normal(size.millimetres(), own("sigma", size), OWN));
    Optional<PlacingLaw> within =
        section
            .positive("within")
            .map(size -> PlacingLaw.within(size.millimetres(), own("within", size), OWN));
    List<PlacingLaw> said =
        List.of(method, sigma, within).stream().flatMap(Optional::stream).toList();
    if (said.size() > 1) {
      section.fault(
          section.has("within") ? "within" : "sigma",
          "is said beside another way of placing",
          "Leave all but one of method, sigma and within out");
    }
    return said.stream().findFirst();
  }

  /** How far fasteners stand over: by the holes' lean over a depth, at the height they pass. */
  private static Optional<PlacingLaw> leaning(Section section, boolean tapped) {
    Optional<Section> leans = section.table("leans");
    if (leans.isEmpty()) {
      return Optional.empty();
    }
    if (!tapped) {
      section.fault("leans", "is said of plain holes", "Leave it out, or write tapped = true");
    }
    String remedy = "Write leans = { sigma = \"0.05 mm\", over = \"10 mm\", passed = \"6 mm\" }";
    Optional<Length> sigma = leans.get().requiredPositive("sigma", remedy);
    Optional<Length> over = leans.get().requiredPositive("over", remedy);
    Optional<Length> passed = leans.get().requiredPositive("passed", remedy);
    leans.get().done();
    if (!tapped || sigma.isEmpty() || over.isEmpty() || passed.isEmpty()) {
      return Optional.empty();
    }
    double atFarFace =
        sigma.get().millimetres() * passed.get().millimetres() / over.get().millimetres();
    String means =
        "leaning by sigma "
            + Say.size(sigma.get())
            + " over "
            + Say.size(over.get())
            + ", "
            + Say.size(passed.get())
            + " passed (the pattern file)";
    return Optional.of(PlacingLaw.normal(atFarFace, means, OWN));
  }

  private static String own(String what, Length size) {
    return what + " " + Say.size(size) + " per axis (the pattern file)";
  }

  private Optional<PlacingLaw> method(Section section, String id) {
    Optional<HoleMethod> method = trade.methods().find(id);
    if (method.isEmpty()) {
      section.fault(
          "method",
          "is no known way of placing a hole",
          "Known are "
              + trade.methods().methods().stream()
                  .map(HoleMethod::id)
                  .collect(Collectors.joining(", ")));
    }
    return method.map(asKnown).map(PlacingLaw::of);
  }

  private static List<Hole> measured(Section section, boolean tapped, Optional<Length> hole) {
    Optional<List<Point>> centres = HolePlaces.read(section, "measured");
    Optional<String> side = side(section);
    List<Optional<Length>> diameters = diameters(section, tapped, centres.map(List::size));
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < centres.map(List::size).orElse(0); i++) {
      Point at = centres.get().get(i);
      int hand = side.filter("below"::equals).isPresent() ? -1 : 1;
      Optional<Length> size = i < diameters.size() ? diameters.get(i) : hole;
      if (!tapped && size.isEmpty()) {
        section
            .reading()
            .faults()
            .addMissing(
                section.at(),
                section.title() + " does not say how large its holes are",
                "Write hole = \"4 mm\", or diameters = [...] as measured, or tapped = true");
        return List.of();
      }
      holes.add(new Hole(new Point(hand * at.xMm() + 0.0, at.yMm()), optional(size, tapped)));
    }
    return holes;
  }

  private static OptionalDouble optional(Optional<Length> size, boolean tapped) {
    return tapped ? OptionalDouble.empty() : OptionalDouble.of(size.orElseThrow().millimetres());
  }

  /** The wrong hand spoils a part, so the side is never taken for granted. */
  private static Optional<String> side(Section section) {
    if (!section.has("measured") && !section.has("seen-from")) {
      return Optional.empty();
    }
    Optional<String> side =
        section.requiredText(
            "seen-from",
            "Write seen-from = \"above\" if the measured face was looked at from above the put"
                + " together parts, or \"below\", which is mirrored");
    if (side.isPresent() && !SIDES.contains(side.get())) {
      section.fault("seen-from", "is no side", "Write \"above\" or \"below\"");
    }
    return side;
  }

  private static List<Optional<Length>> diameters(
      Section section, boolean tapped, Optional<Integer> count) {
    Object value = section.value("diameters").orElse(null);
    if (value == null) {
      return List.of();
    }
    if (!(value instanceof TomlArray array && count.filter(n -> n == array.size()).isPresent())
        || tapped) {
      section.fault(
          "diameters",
          tapped ? "stand beside tapped = true" : "must be as many as measured holes",
          "Write one for each hole of measured: diameters = [\"4.1 mm\", ...]");
      return List.of();
    }
    List<Optional<Length>> sizes = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      sizes.add(
          section
              .reading()
              .length(section.at("diameters"), "diameter " + (i + 1), array.get(i))
              .filter(size -> positive(section, size)));
    }
    return sizes;
  }

  private static boolean positive(Section section, Length size) {
    if (!size.isPositive()) {
      section.fault("diameters", "must all be above 0 mm", "Measure again");
    }
    return size.isPositive();
  }
}
