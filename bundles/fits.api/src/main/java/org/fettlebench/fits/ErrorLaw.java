package org.fettlebench.fits;

/**
 * How one cause puts a hole out of its place. All laws lie evenly about nought; what is always the
 * same way is the offset of a {@link PositionLaw}.
 */
public sealed interface ErrorLaw {
  /** Returns the variance along x, in square millimetres. */
  double varianceXMm2();

  /** Returns the variance along y, in square millimetres. */
  double varianceYMm2();

  /**
   * Errors along x and along y are independent and normal.
   *
   * @param sigmaXMm standard deviation along x; 0 or more
   * @param sigmaYMm standard deviation along y; 0 or more, not both 0
   */
  record Normal(double sigmaXMm, double sigmaYMm) implements ErrorLaw {
    /** Refuses figures out of their range. */
    public Normal {
      refuse("sigma", sigmaXMm, sigmaYMm);
    }

    /** Makes a law that is the same along x and y. */
    public static Normal round(double sigmaMm) {
      return new Normal(sigmaMm, sigmaMm);
    }

    @Override
    public double varianceXMm2() {
      return sigmaXMm * sigmaXMm;
    }

    @Override
    public double varianceYMm2() {
      return sigmaYMm * sigmaYMm;
    }
  }

  /**
   * Errors along x and along y are independent, never more than so much, and any is as likely.
   *
   * @param halfXMm most that it can be out along x, either way; 0 or more
   * @param halfYMm most that it can be out along y, either way; 0 or more, not both 0
   */
  record Bounded(double halfXMm, double halfYMm) implements ErrorLaw {
    /** Refuses figures out of their range. */
    public Bounded {
      refuse("bound", halfXMm, halfYMm);
    }

    @Override
    public double varianceXMm2() {
      return halfXMm * halfXMm / 3;
    }

    @Override
    public double varianceYMm2() {
      return halfYMm * halfYMm / 3;
    }
  }

  /**
   * The error lies somewhere in a circle, any place of it as likely: a drill that has room in a
   * bush.
   *
   * @param radiusMm radius of that circle; above 0
   */
  record Circle(double radiusMm) implements ErrorLaw {
    /** Refuses figures out of their range. */
    public Circle {
      refuse("radius", radiusMm, radiusMm);
    }

    @Override
    public double varianceXMm2() {
      return radiusMm * radiusMm / 4;
    }

    @Override
    public double varianceYMm2() {
      return varianceXMm2();
    }
  }

  private static void refuse(String what, double x, double y) {
    double most = PositionLaw.LARGEST_MM;
    if (!(x >= 0 && x <= most && y >= 0 && y <= most)) {
      double wrong = x >= 0 && x <= most ? y : x;
      throw new SeatException(
          what + " " + wrong + " mm of an error is outside 0 to " + most + " mm");
    }
    if (!(x > 0 || y > 0)) {
      throw new SeatException(what + " 0 mm is no error; leave the step's law out");
    }
  }
}
