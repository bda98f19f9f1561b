package org.fettlebench.holes.patterns;

import org.fettlebench.holes.chance.Chance;

/**
 * Drilling both parts on their own against drilling one and spotting the other through it.
 *
 * @param apart chance when both are drilled on their own
 * @param spotted chance when the second is spotted through the first
 * @param first the part drilled first, through whose holes the other is spotted
 * @param second the other part
 * @param firstSigmaMm standard deviation per axis of the first part's holes against the drawing
 * @param secondApartSigmaMm the same of the second part's holes when drilled on its own
 * @param secondSpottedSigmaMm the same when spotted: the errors of the first part go along
 */
public record SpottingAnswer(
    Chance apart,
    Chance spotted,
    String first,
    String second,
    double firstSigmaMm,
    double secondApartSigmaMm,
    double secondSpottedSigmaMm) {}
