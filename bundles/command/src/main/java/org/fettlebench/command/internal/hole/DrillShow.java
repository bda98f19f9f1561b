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
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Shows one drill: all its names, its size, and where the club has it. */
@Component(service = Command.class, property = Commands.WORDS + "=drill show")
public final class DrillShow extends StockedDrillCommand {
  private static final Usage USAGE =
      Usage.of("drill show", "Shows a drill's names, size and whereabouts.", "drill show No 22")
          .needsMany("NAME", "a drill such as No 22, F, 5/32 or 4.1 mm");

  /** Made by the framework. */
  @Activate
  public DrillShow(@Reference Drills drills, @Reference Stock stock) {
    super(USAGE, drills, stock);
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
    lines.forEach(line -> text.append("\n  ").append(whereabouts(line)));
    if (lines.isEmpty()) {
      text.append("\n  not held");
    }
    Map<String, Object> data = DrillWords.data(drill);
    data.put("lines", lines.stream().map(DrillShow::data).toList());
    return Reply.done(text.toString(), data);
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
