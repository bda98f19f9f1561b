package org.fettlebench.desktop.seats.internal;

/**
 * Something on the drawing that may be taken hold of.
 *
 * @param kind what it is
 * @param index which of its kind, from 0
 * @param part which corner of it, from 0
 */
record Handle(Kind kind, int index, int part) {
  static final Handle CENTRE = new Handle(Kind.CENTRE, 0, 0);
  static final Handle FOUND = new Handle(Kind.FOUND, 0, 0);

  static Handle of(Kind kind, int index) {
    return new Handle(kind, index, 0);
  }

  /** Kinds of handle, in the order in which Tab goes through them. */
  enum Kind {
    /** Where the hole should be. */
    CENTRE("intended centre"),
    /** The hole as measured. */
    FOUND("measured hole"),
    /** A corner of the flat. */
    CORNER("corner"),
    /** The top of an arc of the flat. */
    ARC("arc after corner"),
    /** One end of a wall's foot. */
    WALL_FROM("start of wall"),
    /** The other end. */
    WALL_TO("end of wall"),
    /** A whole wall. */
    WALL("wall"),
    /** Another head. */
    NEIGHBOUR("head beside"),
    /** A corner of the far face. */
    UNDERSIDE("corner of the far face"),
    /** A corner of a hollow. */
    CAVITY("corner of hollow");

    private final String words;

    Kind(String words) {
      this.words = words;
    }
  }

  /** Returns its name for people. */
  String words() {
    return switch (kind) {
      case CENTRE, FOUND -> kind.words;
      case CAVITY -> "corner " + (part + 1) + " of hollow " + (index + 1);
      default -> kind.words + " " + (index + 1);
    };
  }
}
