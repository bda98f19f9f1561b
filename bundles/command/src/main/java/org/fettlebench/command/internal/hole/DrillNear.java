package org.fettlebench.command.internal.hole;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Shows the drills next to a size: of all systems, or only those that the club holds. */
@Component(service = Command.class, property = Commands.WORDS + "=drill near")
public final class DrillNear extends StockedDrillCommand {
  private static final int USUALLY = 6;
  private static final int MOST = 100;
  private static final Usage USAGE =
      Usage.of("drill near", "Shows the drills next to a size.", "drill near 5/32 --count 4")
          .needsMany("SIZE", "a length such as 5/32 or 4.1 mm, or a drill such as No 22")
          .option("--count", "N", "how many, 1 to " + MOST + "; " + USUALLY + " if not said")
          .flag("--held", "only drills that are in their place and fit for use");

  /** Made by the framework. */
  @Activate
  public DrillNear(@Reference Drills drills, @Reference Stock stock) {
    super(USAGE, drills, stock);
  }

  @Override
  public Reply run(Call call) {
    DrillSize asked = DrillWords.read(drills, call, "SIZE");
    int count = call.whole("--count", 1, MOST).orElse(USUALLY);
    HeldDrills held = new HeldDrills(stock, drills);
    List<DrillSize> near =
        call.on("--held")
            ? nearest(held.sizes(), asked.diameter(), count)
            : drills.near(asked.diameter(), count);
    Object data =
        Data.of(
            "size",
                Data.of(
                    "diameterMm",
                    Data.mm(asked.diameter()),
                    "diameterIn",
                    Data.in(asked.diameter())),
            "drills", near.stream().map(drill -> data(drill, asked, held)).toList());
    return Reply.of(near.isEmpty(), text(near, asked, held, call.unit()), data);
  }

  private static List<DrillSize> nearest(List<DrillSize> sizes, Length size, int count) {
    return sizes.stream()
        .sorted(Comparator.comparing(drill -> drill.diameter().minus(size).abs()))
        .limit(count)
        .sorted()
        .toList();
  }

  private static String text(
      List<DrillSize> near, DrillSize asked, HeldDrills held, LengthUnit unit) {
    if (near.isEmpty()) {
      return "no drill that is in its place and fit for use; \"stock receive\" puts drills in";
    }
    LengthUnit other = Figures.other(unit);
    Columns columns =
        new Columns()
            .right(1, 2, 3)
            .row("drill", unit.symbol(), other.symbol(), "differs " + unit.symbol(), "held");
    for (DrillSize drill : near) {
      columns.row(
          DrillWords.names(drill),
          Figures.fine(drill.diameter(), unit),
          Figures.fine(drill.diameter(), other),
          difference(drill, asked, unit),
          String.join("; ", held.places(drill)));
    }
    return columns.text();
  }

  private static String difference(DrillSize drill, DrillSize asked, LengthUnit unit) {
    Length differs = drill.diameter().minus(asked.diameter());
    return (differs.isPositive() ? "+" : "")
        + LengthFormat.number(differs, unit, unit == LengthUnit.MILLIMETRE ? 3 : 4);
  }

  private static Object data(DrillSize drill, DrillSize asked, HeldDrills held) {
    Map<String, Object> data = DrillWords.data(drill);
    data.put("differenceMm", Data.mm(drill.diameter().minus(asked.diameter())));
    data.put("held", !held.places(drill).isEmpty());
    data.put("places", held.places(drill));
    return data;
  }
}
