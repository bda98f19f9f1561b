package org.fettlebench.fits;

import org.fettlebench.measure.Point;

/**
 * Will this head sit on this seat, when the hole lands as well as may be expected?
 *
 * @param seat the flat
 * @param head what bears on it
 * @param holeDiameterMm the hole drilled through it
 * @param expectedErrorMm radius of position error not exceeded at the asked confidence
 * @param errorMeans where that radius comes from, in words: method, confidence, standing
 */
public record SeatQuestion(
    Seat seat, SeatedHead head, double holeDiameterMm, double expectedErrorMm, String errorMeans) {

  /** Returns the same question about another seat. */
  public SeatQuestion withSeat(Seat other) {
    return new SeatQuestion(other, head, holeDiameterMm, expectedErrorMm, errorMeans);
  }

  /** Returns the same question about another head. */
  public SeatQuestion withHead(SeatedHead other) {
    return new SeatQuestion(seat, other, holeDiameterMm, expectedErrorMm, errorMeans);
  }

  /** Returns the same question with room asked for a spanner. */
  public SeatQuestion withSpanner(Spanner spanner) {
    return withHead(head.withSpanner(spanner));
  }

  /** Returns the same question with another hole, in millimetres. */
  public SeatQuestion withHole(double diameterMm) {
    return new SeatQuestion(seat, head, diameterMm, expectedErrorMm, errorMeans);
  }

  /** Returns the same question with the hole placed with another error. */
  public SeatQuestion withError(double radiusMm, String means) {
    return new SeatQuestion(seat, head, holeDiameterMm, radiusMm, means);
  }

  /** Returns the same question with the hole intended elsewhere. */
  public SeatQuestion withIntended(Point centre) {
    return withSeat(seat.withIntended(centre));
  }
}
