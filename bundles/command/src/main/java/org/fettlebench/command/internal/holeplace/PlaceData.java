package org.fettlebench.command.internal.holeplace;

import java.util.Map;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.holes.correct.Cutter;
import org.fettlebench.holes.correct.Direction;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** What several answers about places have in common, as data and in words. */
final class PlaceData {
  private PlaceData() {}

  static Map<String, Object> point(Point at) {
    return Data.of("xMm", Data.mm(at.xMm()), "yMm", Data.mm(at.yMm()));
  }

  static String words(Point at, LengthUnit unit) {
    return "x " + Figures.size(at.xMm(), unit) + ", y " + Figures.size(at.yMm(), unit);
  }

  static Map<String, Object> cutter(Cutter cutter) {
    return Data.of("name", cutter.name(), "diameterMm", Data.mm(cutter.diameterMm()));
  }

  static Map<String, Object> error(ExpectedError error) {
    return Data.of(
        "title", error.title(),
        "radiusMm", Data.mm(error.radiusMm()),
        "means", error.means());
  }

  static Map<String, Object> direction(Direction way) {
    return Data.of(
        "directionDegrees", Data.rounded(way.degrees(), 6),
        "clock", way.clock(),
        "words", way.words());
  }

  static Map<String, Object> seat(SeatAnswer seat) {
    return Data.of(
        "verdict", seat.verdict().word(),
        "allowanceMm", Data.mm(seat.allowanceAtIntendedMm()),
        "expectedErrorMm", Data.mm(seat.question().expectedErrorMm()),
        "errorMeans", seat.question().errorMeans());
  }

  static String seat(SeatAnswer seat, LengthUnit unit) {
    return seat.verdict().word()
        + ", allowance "
        + Figures.allowance(seat.allowanceAtIntendedMm(), unit)
        + " for "
        + Figures.allowance(seat.question().expectedErrorMm(), unit)
        + " expected";
  }
}
