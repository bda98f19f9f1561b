package org.fettlebench.measure;

/** A unit in which a length is typed or shown. */
public enum LengthUnit {
  /** The millimetre. */
  MILLIMETRE("mm", Length.NM_PER_MM),
  /** The inch. */
  INCH("in", Length.NM_PER_INCH);

  private final String symbol;
  private final long nanometres;

  LengthUnit(String symbol, long nanometres) {
    this.symbol = symbol;
    this.nanometres = nanometres;
  }

  /** Returns the symbol written behind a figure. */
  public String symbol() {
    return symbol;
  }

  /** Returns how many nanometres the unit holds. */
  public long nanometres() {
    return nanometres;
  }
}
