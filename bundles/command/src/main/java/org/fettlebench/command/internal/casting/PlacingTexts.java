package org.fettlebench.command.internal.casting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.PlacingWords;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.measure.LengthUnit;

/** A placing in lines of text and as data. */
final class PlacingTexts {
  private PlacingTexts() {}

  static String text(Placing placing, boolean holdsPressure, LengthUnit unit) {
    PlacingWords words = new PlacingWords(placing, unit);
    List<String> text = new ArrayList<>();
    text.add(
        placing.casting().name()
            + ": "
            + words.verdict()
            + (placing.cleansUp() ? ", " : " ")
            + words.spare());
    text.add("  " + words.governs());
    text.add("  " + words.place() + " (" + words.freedom() + ")");
    text.add(faces(placing, words, unit).text());
    givings(text, placing, words);
    text.add("Set out:");
    List<String> setOut = words.settingOut();
    for (int i = 0; i < setOut.size(); i++) {
      String onwards = words.onwards(placing.settingOut().get(i));
      text.add("  - " + setOut.get(i) + (onwards.isEmpty() ? "" : "; " + onwards));
    }
    text.add(
        "Comes off is square to the finished face; spare is that, less the cleaning cut and what"
            + " the measuring may be out. Between the spots measured nothing is known.");
    text.addAll(PlacingWords.cautions(holdsPressure));
    return String.join("\n", text);
  }

  private static void givings(List<String> text, Placing placing, PlacingWords words) {
    if (placing.cleansUp()) {
      return;
    }
    text.add(
        words.givings().isEmpty()
            ? "No dimension of the drawing alone would make it clean up."
            : "Any one of these makes it clean up (placed anew and checked), least first:");
    words.givings().forEach(line -> text.add("  - " + line));
    text.add("Or leave the drawing and cut less:");
    words.lessCuts().forEach(line -> text.add("  - " + line));
  }

  private static Columns faces(Placing placing, PlacingWords words, LengthUnit unit) {
    Columns columns =
        new Columns().indent(2).row("", "comes off", "cleaning cut", "may be out", "spare", "");
    for (Placing.Coming one : placing.features()) {
      columns.row(
          one.feature().name(),
          words.comesOff(one),
          Figures.allowance(one.feature().leastCutMm(), unit),
          Figures.allowance(one.feature().uncertaintyMm(), unit),
          Figures.allowance(one.spareMm(), unit),
          one.governs() ? "governs" : "");
    }
    return columns;
  }

  static Map<String, Object> data(Placing placing, boolean holdsPressure) {
    return Data.of(
        "casting", placing.casting().name(),
        "cleansUp", placing.cleansUp(),
        "verdict", placing.outcome().word(),
        "leastSpareMm", Data.mm(placing.spareMm()),
        "shift", spot(placing.shift()),
        "turn", turn(placing.turnDegrees()),
        "freedom",
            Data.of(
                "shifts", axes(placing.casting().freedom().shifts()),
                "turns", axes(placing.casting().freedom().turns()),
                "largestTurnDegrees",
                    placing.casting().freedom().turns().isEmpty()
                        ? Optional.empty()
                        : Optional.of(
                            Data.rounded(placing.casting().freedom().mostTurnDegrees(), 6))),
        "faces", placing.features().stream().map(PlacingTexts::coming).toList(),
        "givings", placing.givings().stream().map(PlacingTexts::giving).toList(),
        "lessCuts", placing.lessCuts().stream().map(PlacingTexts::lessCut).toList(),
        "settingOut", placing.settingOut().stream().map(PlacingTexts::settingOut).toList(),
        "cautions", PlacingWords.cautions(holdsPressure));
  }

  private static Map<String, Object> coming(Placing.Coming one) {
    return Data.of(
        "name", one.feature().name(),
        "kind", one.feature() instanceof RoundFace round ? round.kind().word() : "face",
        "towards",
            one.feature() instanceof FlatFace flat
                ? Optional.of(flat.towards().word())
                : Optional.empty(),
        "comesOffLeastMm", Data.mm(one.leastMm()),
        "comesOffMostMm", Data.mm(one.mostMm()),
        "spots", one.comesOffMm().stream().map(off -> Data.of("comesOffMm", Data.mm(off))).toList(),
        "cleaningCutMm", Data.mm(one.feature().leastCutMm()),
        "uncertaintyMm", Data.mm(one.feature().uncertaintyMm()),
        "spareMm", Data.mm(one.spareMm()),
        "governs", one.governs());
  }

  private static Map<String, Object> giving(Placing.Giving giving) {
    return Data.of(
        "name", giving.feature().name(),
        "givesMm", Data.mm(giving.byMm()),
        "finishedMm", Data.mm(giving.finishedMm()),
        "leastSpareThenMm", Data.mm(giving.spareMm()));
  }

  private static Map<String, Object> lessCut(Placing.LessCut less) {
    return Data.of(
        "name", less.feature().name(),
        "cutMm", Data.mm(less.cutMm()),
        "cleaningCutMm", Data.mm(less.feature().leastCutMm()),
        "hollowStays", less.hollow());
  }

  private static Map<String, Object> settingOut(Placing.SettingOut from) {
    return Data.of(
        "axis", from.axis().word(),
        "from", from.from().name(),
        "spots", from.depthsMm().stream().map(deep -> Data.of("depthMm", Data.mm(deep))).toList());
  }

  private static Map<String, Object> spot(Spot spot) {
    return Data.of(
        "xMm", Data.mm(spot.xMm()), "yMm", Data.mm(spot.yMm()), "zMm", Data.mm(spot.zMm()));
  }

  private static Map<String, Object> turn(Spot turn) {
    return Data.of(
        "aboutXDegrees", Data.rounded(turn.xMm(), 6),
        "aboutYDegrees", Data.rounded(turn.yMm(), 6),
        "aboutZDegrees", Data.rounded(turn.zMm(), 6));
  }

  private static List<String> axes(Set<Axis> axes) {
    return axes.stream().sorted(Comparator.naturalOrder()).map(Axis::word).toList();
  }
}
