package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.HoleError;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.HoleMethods;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.holes.chance.MethodEstimates;
import org.fettlebench.kits.ClubMethods;
import org.fettlebench.measure.Point;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Brings the tables' methods and the club's measured errors together. */
@Component(service = ClubMethods.class)
public final class ClubMethodsService implements ClubMethods {
  private static final Asked EVERYBODY =
      new Asked(Optional.empty(), Optional.empty(), MethodEstimates.USUAL_PRIOR_HOLES);

  private final HoleMethods methods;
  private final MethodEstimates estimates;

  /** Takes the tables' methods and the arithmetic. */
  @Activate
  public ClubMethodsService(@Reference HoleMethods methods, @Reference MethodEstimates estimates) {
    this.methods = methods;
    this.estimates = estimates;
  }

  @Override
  public List<MethodEstimate> estimates(List<MeasuredError> errors, Asked asked) {
    return methods.methods().stream().map(method -> estimate(method, errors, asked)).toList();
  }

  @Override
  public Optional<MethodEstimate> find(String id, List<MeasuredError> errors) {
    return methods.find(id).map(method -> estimate(method, errors, EVERYBODY));
  }

  private MethodEstimate estimate(HoleMethod method, List<MeasuredError> errors, Asked asked) {
    List<Point> own = new ArrayList<>();
    List<Point> others = new ArrayList<>();
    for (MeasuredError entry : errors) {
      HoleError error = entry.error();
      if (entry.counts() && error.method().equals(method.id())) {
        (isAsked(error, asked) ? own : others)
            .add(new Point(error.x().millimetres(), error.y().millimetres()));
      }
    }
    HoleMethod before =
        others.isEmpty()
            ? method
            : estimates.estimate(method, others, asked.priorHoles(), "others").now();
    return estimates.estimate(before, own, asked.priorHoles(), whose(asked));
  }

  private static boolean isAsked(HoleError error, Asked asked) {
    return asked.member().map(error.member()::equals).orElse(true)
        && asked.machine().map(error.machine()::equals).orElse(true);
  }

  private static String whose(Asked asked) {
    List<String> words = new ArrayList<>();
    asked.member().ifPresent(words::add);
    asked.machine().ifPresent(machine -> words.add("on " + machine));
    return words.isEmpty() ? "the club" : String.join(" ", words);
  }
}
