package org.fettlebench.kits;

import org.fettlebench.castings.Casting;

/**
 * What a casting file says.
 *
 * @param casting the rough casting with what is to be finished out of it
 * @param holdsPressure whether the finished part holds steam or pressure
 */
public record CastingFile(Casting casting, boolean holdsPressure) {}
