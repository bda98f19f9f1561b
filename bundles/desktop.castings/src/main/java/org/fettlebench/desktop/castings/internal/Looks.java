package org.fettlebench.desktop.castings.internal;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Towards;

/** What a line of the table is: a flat face that looks one way, or a bore or boss along an axis. */
enum Looks {
  LEFT(Towards.LEFT),
  RIGHT(Towards.RIGHT),
  NEAR(Towards.NEAR),
  FAR(Towards.FAR),
  DOWN(Towards.DOWN),
  UP(Towards.UP),
  BORE_X(RoundFace.Kind.BORE, Axis.X),
  BORE_Y(RoundFace.Kind.BORE, Axis.Y),
  BORE_Z(RoundFace.Kind.BORE, Axis.Z),
  BOSS_X(RoundFace.Kind.BOSS, Axis.X),
  BOSS_Y(RoundFace.Kind.BOSS, Axis.Y),
  BOSS_Z(RoundFace.Kind.BOSS, Axis.Z);

  private final Optional<Towards> towards;
  private final Optional<RoundFace.Kind> kind;
  private final Axis axis;

  Looks(Towards towards) {
    this.towards = Optional.of(towards);
    this.kind = Optional.empty();
    this.axis = towards.axis();
  }

  Looks(RoundFace.Kind kind, Axis along) {
    this.towards = Optional.empty();
    this.kind = Optional.of(kind);
    this.axis = along;
  }

  static Looks of(Feature feature) {
    return Arrays.stream(values())
        .filter(
            one ->
                feature instanceof FlatFace flat
                    ? one.towards.filter(way -> way == flat.towards()).isPresent()
                    : one.kind.filter(each -> each == ((RoundFace) feature).kind()).isPresent()
                        && one.axis == ((RoundFace) feature).along())
        .findFirst()
        .orElseThrow();
  }

  /** Returns the words of all, in their order. */
  static String[] all() {
    return Arrays.stream(values()).map(Looks::words).toArray(String[]::new);
  }

  Optional<Towards> towards() {
    return towards;
  }

  Optional<RoundFace.Kind> kind() {
    return kind;
  }

  boolean round() {
    return kind.isPresent();
  }

  /** Returns the axis that a flat face looks along, or along which a round one runs. */
  Axis axis() {
    return axis;
  }

  /** Returns what stands in the table. */
  String words() {
    return towards
        .map(way -> way.word() + " " + (way.sign() < 0 ? "\u2212" : "+") + way.axis().word())
        .orElseGet(() -> called() + " " + axis.word());
  }

  /** Returns what it is called until a person names it. */
  String called() {
    return towards.map(Towards::word).orElseGet(() -> kind.orElseThrow().word());
  }

  /** Returns what is measured of the rough one at a place, in the order of the columns. */
  List<String> figures() {
    return round() ? List.of("x", "y", "z", "Dia.") : List.of("x", "y", "z");
  }
}
