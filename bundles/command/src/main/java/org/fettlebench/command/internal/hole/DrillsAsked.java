package org.fettlebench.command.internal.hole;

import java.util.List;
import java.util.Map;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Call;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Data;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;

/**
 * The drills among which a call chooses: those at hand, or all of the catalogue. A stock in which
 * no drill was ever entered says nothing about what lies in the drawer, so then the catalogue
 * answers, and the answer says so.
 *
 * @param held drills at hand, with their places
 * @param sizes drills to choose from, smallest first
 * @param from where they come from
 */
public record DrillsAsked(HeldDrills held, List<DrillSize> sizes, From from) {
  private static final String HELD = "--held";
  private static final String CATALOGUE = "--catalogue";

  /** Where the drills come from. */
  public enum From {
    /** The stock. */
    HELD("drills in their place"),
    /** The catalogue, as was asked. */
    CATALOGUE("the whole catalogue"),
    /** The catalogue, because the stock has no drill. */
    NONE_ENTERED("the whole catalogue, since no drill is entered in the stock");

    private final String words;

    From(String words) {
      this.words = words;
    }

    /** Returns the words for people. */
    public String words() {
      return words;
    }

    /** Returns whether all drills of the catalogue were looked at. */
    public boolean catalogue() {
      return this != HELD;
    }

    /** Returns the fields that tell machines. */
    public Map<String, Object> data() {
      return Data.of(
          "from", catalogue() ? "catalogue" : "held", "drillsInStock", this != NONE_ENTERED);
    }
  }

  /** Adds the flags. */
  public static Usage flags(Usage usage) {
    return usage
        .flag(HELD, "only drills in their place and fit for use, even if none is entered")
        .flag(
            CATALOGUE,
            "all drills of the catalogue; if neither is said, those held once any is entered");
  }

  /**
   * Reads the flags and the stock.
   *
   * @throws CommandException if both flags were said
   */
  public static DrillsAsked of(Call call, Stock stock, Drills drills) {
    if (call.on(HELD) && call.on(CATALOGUE)) {
      throw new CommandException("say --held or --catalogue, not both");
    }
    HeldDrills held = new HeldDrills(stock, drills);
    From from = from(call, held);
    return new DrillsAsked(held, from.catalogue() ? drills.catalogue() : held.sizes(), from);
  }

  private static From from(Call call, HeldDrills held) {
    if (call.on(CATALOGUE)) {
      return From.CATALOGUE;
    }
    return held.entered() || call.on(HELD) ? From.HELD : From.NONE_ENTERED;
  }
}
