package org.fettlebench.desktop.seats.internal;

import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Point;

/**
 * Everything a person put on the page, finished or not. Immutable; a change makes another.
 *
 * @param name of the seat
 * @param shape the flat and what stands on it
 * @param top what sits on it
 * @param hole what goes through it
 */
record Sketch(String name, Shape shape, Top top, Hole hole) {
  /** Nothing measured yet. */
  static final Sketch EMPTY =
      new Sketch(
          "",
          Shape.EMPTY,
          new Top("", "", Optional.empty(), OptionalDouble.empty()),
          new Hole(
              Optional.empty(),
              OptionalDouble.empty(),
              "",
              Hole.USUAL_CONFIDENCE,
              Optional.empty()));

  Sketch withName(String other) {
    return new Sketch(other, shape, top, hole);
  }

  Sketch with(Shape other) {
    return new Sketch(name, other, top, hole);
  }

  Sketch with(Top other) {
    return new Sketch(name, shape, other, hole);
  }

  Sketch with(Hole other) {
    return new Sketch(name, shape, top, other);
  }

  /** Returns where the hole should be: where a person put it, else in the middle of the flat. */
  Optional<Point> centre() {
    return hole.centre().isPresent() ? hole.centre() : shape.middle();
  }

  /**
   * What sits on the flat.
   *
   * @param thread designation; empty when not chosen, or the head was measured
   * @param style id of a listed style; empty likewise
   * @param measured a head as measured, instead
   * @param flatsAlongDegrees set so; empty when turned anywhere
   * @param spanner that must go on it; empty when not asked
   * @param washer under it; empty when it bears on the flat itself
   */
  record Top(
      String thread,
      String style,
      Optional<Measured> measured,
      OptionalDouble flatsAlongDegrees,
      Optional<Spanner> spanner,
      Optional<SeatedHead.Washer> washer) {
    Top(
        String thread,
        String style,
        Optional<Measured> measured,
        OptionalDouble flatsAlongDegrees) {
      this(thread, style, measured, flatsAlongDegrees, Optional.empty(), Optional.empty());
    }

    Top listed(String newThread, String newStyle) {
      return new Top(newThread, newStyle, Optional.empty(), flatsAlongDegrees, spanner, washer);
    }

    Top asMeasured(Measured head) {
      return new Top(thread, style, Optional.of(head), flatsAlongDegrees, spanner, washer);
    }

    Top set(OptionalDouble degrees) {
      return new Top(thread, style, measured, degrees, spanner, washer);
    }

    Top turnedBy(Optional<Spanner> tool) {
      return new Top(thread, style, measured, flatsAlongDegrees, tool, washer);
    }

    Top on(Optional<SeatedHead.Washer> under) {
      return new Top(thread, style, measured, flatsAlongDegrees, spanner, under);
    }
  }

  /**
   * A head as measured.
   *
   * @param title for people
   * @param acrossFlatsMm empty when round
   * @param acrossCornersMm or the diameter; taken from the flats when empty
   * @param heightMm where known
   */
  record Measured(
      String title,
      OptionalDouble acrossFlatsMm,
      OptionalDouble acrossCornersMm,
      OptionalDouble heightMm) {}

  /**
   * What goes through the flat.
   *
   * @param centre where it should be; the middle of the flat when empty
   * @param diameterMm as asked; proposed from the thread when empty
   * @param method id of the way of placing it; empty when not chosen
   * @param confidence chance asked that it lands within its expected error
   * @param found the hole that is there, where it was measured
   * @param practice how a person works at it
   */
  record Hole(
      Optional<Point> centre,
      OptionalDouble diameterMm,
      String method,
      double confidence,
      Optional<SeatFile.Drilled> found,
      Practice practice) {
    /** The chance asked in a kit that does not say otherwise. */
    static final double USUAL_CONFIDENCE = 0.95;

    Hole(
        Optional<Point> centre,
        OptionalDouble diameterMm,
        String method,
        double confidence,
        Optional<SeatFile.Drilled> found) {
      this(centre, diameterMm, method, confidence, found, Practice.USUAL);
    }

    Hole at(Point place) {
      return new Hole(Optional.of(place), diameterMm, method, confidence, found, practice);
    }

    Hole sized(OptionalDouble mm) {
      return new Hole(centre, mm, method, confidence, found, practice);
    }

    Hole by(String newMethod) {
      return new Hole(centre, diameterMm, newMethod, confidence, found, practice);
    }

    Hole asking(double chance) {
      return new Hole(centre, diameterMm, method, chance, found, practice);
    }

    Hole found(Optional<SeatFile.Drilled> drilled) {
      return new Hole(centre, diameterMm, method, confidence, drilled, practice);
    }

    Hole with(Practice other) {
      return new Hole(centre, diameterMm, method, confidence, found, other);
    }
  }
}
