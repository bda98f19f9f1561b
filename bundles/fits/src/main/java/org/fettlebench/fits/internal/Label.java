package org.fettlebench.fits.internal;

import org.fettlebench.fits.SeatAnswer.Governing.Kind;

/** What a feature is called. */
record Label(Kind kind, String name) {}
