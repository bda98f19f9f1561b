package org.fettlebench.kits.internal;

import org.fettlebench.holes.chance.Chances;
import org.fettlebench.kits.ClubMethods;

/** What the check asks about where holes land. */
record Odds(ClubMethods methods, Chances chances) {}
