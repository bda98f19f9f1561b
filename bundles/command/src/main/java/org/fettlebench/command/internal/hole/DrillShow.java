package org.fettlebench.command.internal.hole;

import java.util.List;
import java.util.Map;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.drilled.DrilledHole;
import org.fettlebench.tooling.drilled.DrilledHoles;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Shows one drill: all its names, its size, and where the club has it. */
@Component(service = Command.class, property = Commands.WORDS + "=drill show")
public final class DrillShow extends StockedDrillCommand {
  private static final Usage USAGE =
      Usage.of("drill show", "Shows a drill's names, size and whereabouts.", "drill show No 22")
          .needsMany("NAME", "a drill such as No 22, F, 5/32 or 4.1 mm");

  private final DrilledHoles holes;

  /** Made by the framework. */
  @Activate
  public DrillShow(
      @Reference Drills drills, @Reference Stock stock, @Reference DrilledHoles holes) {
    super(USAGE, drills, stock);
    this.holes = holes;
  }

  @Override
  public Reply run(Call call) {
    DrillSize drill = DrillWords.read(drills, call, "NAME");
    List<StockLine> lines = stock.lines().stream().filter(line -> isOf(line, drill)).toList();
    StringBuilder text =
        new StringBuilder(DrillWords.names(drill))
            .append("\n  diameter ")
            .append(Figures.fine(drill.diameter(), call.unit()))
            .append(" ")
            .append(call.unit().symbol())
            .append(" (")
            .append(Figures.fine(drill.diameter(), Figures.other(call.unit())))
            .append(" ")
            .append(Figures.other(call.unit()).symbol())
            .append(LengthFormat.fraction(drill.diameter()).map(f -> ", " + f + " in").orElse(""))
            .append(")");
    DrilledHole hole = holes.expected(drill);
    hole.oversize().ifPresent(one -> text.append("\n  ").append(said(one, call.unit())));
    hole.tolerance().ifPresent(one -> text.append("\n  ").append(said(one, call.unit())));
    lines.forEach(line -> text.append("\n  ").append(whereabouts(line)));
    if (lines.isEmpty()) {
      text.append("\n  not held");
    }
    Map<String, Object> data = DrillWords.data(drill);
    hole.oversize().ifPresent(one -> data.put("holeOversize", data(one)));
    hole.tolerance().ifPresent(one -> data.put("holeTolerance", data(one)));
    data.put("lines", lines.stream().map(DrillShow::data).toList());
    return Reply.done(text.toString(), data);
  }

  private static String said(DrilledHole.Oversize oversize, LengthUnit unit) {
    String range =
        oversize
            .least()
            .flatMap(
                least ->
                    oversize
                        .most()
                        .map(
                            most ->
                                Figures.fine(least, unit)
                                    + " to "
                                    + Figures.fine(most, unit)
                                    + ", "))
            .orElse("");
    return "its hole comes out %s%s %s on average too large; %s"
        .formatted(
            range,
            Figures.fine(oversize.mean(), unit),
            unit.symbol(),
            Figures.source(oversize.source()));
  }

  private static String said(DrilledHole.Tolerance tolerance, LengthUnit unit) {
    return "its hole may be off by +%s -%s %s; %s"
        .formatted(
            Figures.fine(tolerance.above(), unit),
            Figures.fine(tolerance.below(), unit),
            unit.symbol(),
            Figures.source(tolerance.source()));
  }

  private static Object data(DrilledHole.Oversize oversize) {
    return Data.of(
        "leastMm", oversize.least().map(Data::mm),
        "meanMm", Data.mm(oversize.mean()),
        "mostMm", oversize.most().map(Data::mm),
        "leastIn", oversize.least().map(Data::in),
        "meanIn", Data.in(oversize.mean()),
        "mostIn", oversize.most().map(Data::in),
        "source", Figures.sourceData(oversize.source()));
  }

  private static Object data(DrilledHole.Tolerance tolerance) {
    return Data.of(
        "aboveMm", Data.mm(tolerance.above()),
        "belowMm", Data.mm(tolerance.below()),
        "aboveIn", Data.in(tolerance.above()),
        "belowIn", Data.in(tolerance.below()),
        "source", Figures.sourceData(tolerance.source()));
  }

  private static boolean isOf(StockLine line, DrillSize drill) {
    return line.goods().kind() == Goods.Kind.DRILL
        && line.quantity() > 0
        && line.goods().diameter().filter(drill.diameter()::equals).isPresent();
  }

  private static String whereabouts(StockLine line) {
    return line.place()
        + ": "
        + line.present()
        + (line.condition() == StockLine.Condition.WORN ? " worn" : "")
        + (line.lent() > 0 ? ", and " + line.lent() + " out: " + line.holder() : "");
  }

  private static Object data(StockLine line) {
    return Data.of(
        "id", line.id(),
        "place", line.place(),
        "condition", line.condition().name().toLowerCase(java.util.Locale.ROOT),
        "present", line.present(),
        "lent", line.lent(),
        "holder", Data.said(line.holder()));
  }
}
