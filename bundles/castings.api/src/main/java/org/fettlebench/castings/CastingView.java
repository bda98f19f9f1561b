package org.fettlebench.castings;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** From where a casting is drawn. */
public enum CastingView {
  /** From above: x to the right, y up the paper. */
  PLAN("from above", Axis.X, Axis.Y),
  /** From the front: x to the right, z up the paper. */
  FRONT("from the front", Axis.X, Axis.Z),
  /** From the right: y to the right, z up the paper. */
  SIDE("from the right", Axis.Y, Axis.Z);

  /** In the order in which a drawing office would lay them down. */
  private static final List<CastingView> USUAL = List.of(FRONT, PLAN, SIDE);

  private final String words;
  private final Axis across;
  private final Axis up;

  CastingView(String words, Axis across, Axis up) {
    this.words = words;
    this.across = across;
    this.up = up;
  }

  /**
   * Returns the views in which something measured is seen that no other shows better: those whose
   * both axes were measured along, else one that shows the axis that was.
   */
  public static List<CastingView> of(Casting casting) {
    Set<Axis> measured = EnumSet.noneOf(Axis.class);
    for (Feature feature : casting.features()) {
      if (feature instanceof FlatFace flat) {
        measured.add(flat.towards().axis());
      } else if (feature instanceof RoundFace round) {
        measured.addAll(EnumSet.complementOf(EnumSet.of(round.along())));
      }
    }
    List<CastingView> both =
        USUAL.stream()
            .filter(view -> measured.contains(view.across) && measured.contains(view.up))
            .toList();
    return both.isEmpty()
        ? USUAL.stream()
            .filter(view -> measured.contains(view.across) || measured.contains(view.up))
            .limit(1)
            .toList()
        : both;
  }

  /**
   * Returns whether this is a view in which a feature has its name and figure: a flat face seen
   * from its edge, a round one from its end.
   */
  public boolean names(Feature feature) {
    return feature instanceof FlatFace flat
        ? flat.towards().axis() != along()
        : ((RoundFace) feature).along() == along();
  }

  /** Returns the words for it. */
  public String words() {
    return words;
  }

  /** Returns the axis that runs to the right on the paper. */
  public Axis across() {
    return across;
  }

  /** Returns the axis that runs up the paper. */
  public Axis up() {
    return up;
  }

  /** Returns the axis along which it looks. */
  public Axis along() {
    return switch (this) {
      case PLAN -> Axis.Z;
      case FRONT -> Axis.Y;
      case SIDE -> Axis.X;
    };
  }
}
