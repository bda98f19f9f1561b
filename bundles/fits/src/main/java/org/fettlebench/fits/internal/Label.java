package org.fettlebench.fits.internal;

import org.fettlebench.fits.SeatAnswer.Governing.Kind;

/**
 * What a feature is called, and what would meet it. Put together only when it is read.
 *
 * @param kind of feature
 * @param prefix said before its name
 * @param name of the thing itself
 * @param meets what would meet it
 */
record Label(Kind kind, String prefix, String name, String meets) {
  Label(Kind kind, String name, String meets) {
    this(kind, "", name, meets);
  }

  String words() {
    return prefix + name;
  }
}
