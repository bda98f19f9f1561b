package org.fettlebench.fits;

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
    Seat seat, SeatedHead head, double holeDiameterMm, double expectedErrorMm, String errorMeans) {}
