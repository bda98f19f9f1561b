package org.fettlebench.command.internal.method;

import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.command.Call;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.kits.ClubMethods;
import org.fettlebench.measure.LengthUnit;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/**
 * The ways of placing a hole as the club's measured errors have made them, for whom a call asks.
 */
@Component(service = Placings.class)
public final class Placings {
  private final ClubMethods methods;
  private final MeasuredErrors errors;

  /** Made by the framework. */
  @Activate
  public Placings(@Reference ClubMethods methods, @Reference MeasuredErrors errors) {
    this.methods = methods;
    this.errors = errors;
  }

  /** Adds the options that say whose holes are meant. */
  public static Usage options(Usage usage) {
    return Asking.options(usage);
  }

  /** Returns the estimates of all ways, least careful first as the tables have them. */
  public List<MethodEstimate> all(Call call) {
    List<MeasuredError> book = errors.all();
    return methods.estimates(book, Asking.of(call, book));
  }

  /** Returns all ways with what is known of them now. */
  public List<HoleMethod> now(Call call) {
    return all(call).stream().map(MethodEstimate::now).toList();
  }

  /**
   * Returns the estimate of one way.
   *
   * @throws org.fettlebench.command.CommandException if it is not known, with those that are
   */
  public MethodEstimate one(Call call, String id) {
    return MethodShow.one(all(call), id);
  }

  /** Returns what turns a way of the tables into what is known of it now. */
  public UnaryOperator<HoleMethod> asKnown(Call call) {
    List<MethodEstimate> all = all(call);
    return method -> MethodShow.one(all, method.id()).now();
  }

  /** Adds a row about the spread that was measured and how sure it is; none before. */
  public static Columns spread(Columns columns, MethodEstimate estimate, LengthUnit unit) {
    if (estimate.holes() == 0) {
      return columns;
    }
    String symbol = " " + unit.symbol();
    return columns.row(
        "sigma as measured",
        MethodTexts.sigma(estimate, unit)
            + symbol
            + ", with a chance of 95 % within "
            + MethodTexts.interval(estimate, unit)
            + symbol);
  }

  /** Returns an estimate as data, as the method commands give it. */
  public static Map<String, Object> data(MethodEstimate estimate) {
    return MethodTexts.data(estimate);
  }
}
