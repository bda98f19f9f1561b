package org.fettlebench.holes.chance;

import org.fettlebench.fits.HoleMethod;

/**
 * The chance that a hole placed by a method lands among the allowed centres of a seat.
 *
 * @param method the way of placing it
 * @param atIntended when it is aimed at the intended centre
 * @param atBest when it is aimed at the best centre
 */
public record MethodChance(HoleMethod method, Chance atIntended, Chance atBest) {}
