package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Optional;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.holes.chance.MethodEstimates;
import org.fettlebench.kits.ClubMethods;

/** The ways of placing a hole as everybody's measured holes have made them. */
record ClubWays(Optional<ClubMethods> methods, Optional<MeasuredErrors> errors) {
  private static final ClubMethods.Asked EVERYBODY =
      new ClubMethods.Asked(Optional.empty(), Optional.empty(), MethodEstimates.USUAL_PRIOR_HOLES);

  /** Returns them, least careful first; empty where nothing installed keeps what was measured. */
  List<HoleMethod> now() {
    return methods.stream()
        .flatMap(all -> errors.stream().map(book -> all.estimates(book.all(), EVERYBODY)))
        .flatMap(List::stream)
        .map(MethodEstimate::now)
        .toList();
  }
}
