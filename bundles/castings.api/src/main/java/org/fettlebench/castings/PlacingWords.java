package org.fettlebench.castings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/**
 * A placing in the words of the trade, the same in the window, on the command line and on paper.
 * Lengths stand both ways, the asked unit first.
 */
public final class PlacingWords {
  /** With all that is machined out of castings. Common practice, no source. */
  public static final String CAUTION =
      "Castings: clamp on sound metal and pack what rocks. The skin is hard and sandy: go under it"
          + " with the first cut. Swarf of cast iron is dust: eye protection, no compressed air,"
          + " brush and never fingers.";

  /** With castings that hold pressure. */
  public static final String PRESSURE =
      "This holds pressure: walls that are left follow the design as approved, the rules of the"
          + " club's boiler inspector and local law. These figures do not replace that examination.";

  private static final double SEEN_MM = 0.0005;

  private final Placing placing;
  private final LengthUnit unit;

  /** Takes what is to be said, and the unit that stands first. */
  public PlacingWords(Placing placing, LengthUnit unit) {
    this.placing = placing;
    this.unit = unit;
  }

  /** Returns the verdict alone. */
  public String verdict() {
    return placing.outcome().word();
  }

  /** Returns by how much it does or does not. */
  public String spare() {
    return placing.cleansUp()
        ? allowance(placing.spareMm()) + " to spare"
        : "by " + allowance(-placing.spareMm());
  }

  /** Returns what holds the spare down. */
  public String governs() {
    List<String> names =
        placing.features().stream()
            .filter(Placing.Coming::governs)
            .map(one -> one.feature().name())
            .toList();
    return joined(names) + (names.size() == 1 ? " governs" : " govern");
  }

  /** Returns what comes off at least, and at most when that differs. */
  public String comesOff(Placing.Coming one) {
    boolean even = one.mostMm() - one.leastMm() < SEEN_MM;
    return size(one.leastMm())
        + (even ? "" : " to " + size(one.mostMm()))
        + (one.feature() instanceof RoundFace ? " per side" : "");
  }

  /** Returns how the finished part lies in the casting. */
  public String place() {
    Spot shift = placing.shift();
    List<String> turns = new ArrayList<>();
    for (Axis axis : axes(placing.casting().freedom().turns())) {
      double degrees = placing.turnDegrees().alongMm(axis);
      if (Math.abs(degrees) >= 0.0005) {
        turns.add(
            String.format(Locale.ROOT, "%.3f", Math.abs(degrees))
                + " degrees "
                + (degrees > 0 ? "anticlockwise" : "clockwise")
                + " as seen against "
                + axis.word());
      }
    }
    return "the drawing's datum lies at x "
        + size(shift.xMm())
        + ", y "
        + size(shift.yMm())
        + ", z "
        + size(shift.zMm())
        + " from the rough datum, "
        + (turns.isEmpty() ? "not turned" : "turned " + joined(turns));
  }

  /** Returns what was allowed to move, so that nobody takes it for more. */
  public String freedom() {
    Freedom freedom = placing.casting().freedom();
    String shifts = named(freedom.shifts());
    String turns = named(freedom.turns());
    return (shifts.isEmpty() ? "not shifted" : "may be shifted along " + shifts)
        + (turns.isEmpty()
            ? ", not turned"
            : ", turned about "
                + turns
                + " up to "
                + plain(freedom.mostTurnDegrees())
                + " degrees");
  }

  /** Returns the changes of the drawing that alone would do, least first. */
  public List<String> givings() {
    return placing.givings().stream().map(this::giving).toList();
  }

  private String giving(Placing.Giving giving) {
    Feature feature = giving.feature();
    String finished =
        feature instanceof FlatFace flat
            ? flat.towards().axis().word()
                + " "
                + size(giving.finishedMm())
                + " in place of "
                + size(flat.finishedMm())
            : "diameter "
                + size(giving.finishedMm())
                + " in place of "
                + size(((RoundFace) feature).finishedDiameterMm());
    String how =
        feature instanceof FlatFace
            ? "deeper"
            : ((RoundFace) feature).kind() == RoundFace.Kind.BORE ? "larger" : "smaller";
    return feature.name() + " gives " + allowance(giving.byMm()) + " (" + how + "): " + finished;
  }

  /** Returns what to cut where the whole cleaning cut is lacking, when no dimension may give. */
  public List<String> lessCuts() {
    return placing.lessCuts().stream().map(this::lessCut).toList();
  }

  private String lessCut(Placing.LessCut less) {
    return less.feature().name()
        + (less.hollow()
            ? ": the finished face lies up to "
                + allowance(-less.cutMm())
                + " outside the metal; a hollow stays"
            : ": a cut of "
                + allowance(less.cutMm())
                + " in place of "
                + allowance(less.feature().leastCutMm())
                + "; skin may show");
  }

  /** Returns where to set out from, axis by axis. */
  public List<String> settingOut() {
    return placing.settingOut().stream().map(this::settingOut).toList();
  }

  private String settingOut(Placing.SettingOut from) {
    List<String> depths = from.depthsMm().stream().map(this::size).toList();
    return "along "
        + from.axis().word()
        + " from "
        + from.from().name()
        + ": finished face "
        + (depths.stream().distinct().count() == 1
            ? depths.get(0) + " under the rough" + (depths.size() == 1 ? "" : " at every spot")
            : joined(underSpots(depths)));
  }

  /** Spots under which the face lies equally deep, as it is shown, are named together. */
  private static List<String> underSpots(List<String> depths) {
    List<String> said = new ArrayList<>();
    for (String depth : new LinkedHashSet<>(depths)) {
      List<String> spots = new ArrayList<>();
      for (int i = 0; i < depths.size(); i++) {
        if (depths.get(i).equals(depth)) {
          spots.add(String.valueOf(i + 1));
        }
      }
      said.add(depth + " under spot" + (spots.size() == 1 ? " " : "s ") + joined(spots));
    }
    return said;
  }

  /**
   * Returns how far the other finished faces and centres lie from the one that is set out first
   * along an axis, as the drawing has them: empty when there is no other.
   */
  public String onwards(Placing.SettingOut from) {
    Axis axis = from.axis();
    List<String> others = new ArrayList<>();
    for (Feature feature : placing.casting().features()) {
      if (feature instanceof FlatFace flat
          && flat.towards().axis() == axis
          && !flat.name().equals(from.from().name())) {
        others.add(
            flat.name() + " " + size(Math.abs(flat.finishedMm() - from.from().finishedMm())));
      } else if (feature instanceof RoundFace round && round.along() != axis) {
        double centre = round.finishedCentre().alongMm(axis);
        others.add(
            "centre of " + round.name() + " " + size(Math.abs(centre - from.from().finishedMm())));
      }
    }
    return others.isEmpty() ? "" : "from that line on: " + joined(others);
  }

  /** Returns the cautions that go with the work. */
  public static List<String> cautions(boolean holdsPressure) {
    return holdsPressure ? List.of(CAUTION, PRESSURE) : List.of(CAUTION);
  }

  private String size(double millimetres) {
    return LengthFormat.showBoth(Length.ofMillimetres(millimetres), unit);
  }

  private String allowance(double millimetres) {
    return LengthFormat.allowanceBoth(Length.ofMillimetres(millimetres), unit);
  }

  private static List<Axis> axes(Set<Axis> axes) {
    return axes.stream().sorted(Comparator.naturalOrder()).toList();
  }

  private static String named(Set<Axis> axes) {
    return joined(axes(axes).stream().map(Axis::word).toList());
  }

  private static String plain(double degrees) {
    return degrees == Math.rint(degrees) ? String.valueOf((long) degrees) : String.valueOf(degrees);
  }

  private static String joined(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : words.subList(0, last).stream().collect(Collectors.joining(", "))
            + " and "
            + words.get(last);
  }
}
