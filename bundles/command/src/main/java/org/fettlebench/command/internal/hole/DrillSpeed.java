package org.fettlebench.command.internal.hole;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Cautions;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.thread.ThreadWords;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.speed.CuttingOperation;
import org.fettlebench.tooling.speed.SpeedJob;
import org.fettlebench.tooling.speed.SpindleFit;
import org.fettlebench.tooling.speed.SpindleSpeed;
import org.fettlebench.tooling.speed.SpindleSpeeds;
import org.fettlebench.tooling.speed.SurfaceSpeed;
import org.fettlebench.tooling.speed.ToolSteel;
import org.fettlebench.tooling.work.WorkMaterials;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Says how fast to turn a drill or another cutter, and what a machine can do of that. */
@Component(property = Commands.WORDS + "=drill speed")
public final class DrillSpeed implements Command {
  private static final Usage USAGE =
      Usage.of(
              "drill speed",
              "Says how fast a spindle should turn, and which of a machine's speeds to set.",
              "drill speed 5/32 --material brass --machine 480,850,1400,2400,4100")
          .needsMany("SIZE", "a drill or a diameter; with --operation tap a thread")
          .option(WorkWords.OPTION, "NAME", "what is cut, such as brass, EN1A, cast iron")
          .option("--machine", "RPM", "its range like 300-3000, or its steps like 480,850,1400")
          .option("--operation", "WHAT", "drill (if not said), countersink, counterbore, ream, tap")
          .flag("--carbon", "the cutter is of carbon steel; of high-speed steel if not said");

  private final Threads threads;
  private final Drills drills;
  private final SpindleSpeeds speeds;
  private final WorkMaterials materials;

  /** Made by the framework. */
  @Activate
  public DrillSpeed(
      @Reference Threads threads,
      @Reference Drills drills,
      @Reference SpindleSpeeds speeds,
      @Reference WorkMaterials materials) {
    this.threads = threads;
    this.drills = drills;
    this.speeds = speeds;
    this.materials = materials;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    CuttingOperation operation = operation(call);
    SpeedJob job =
        new SpeedJob(
            operation,
            diameter(call, operation),
            WorkWords.needed(materials, call),
            call.on("--carbon") ? ToolSteel.CARBON : ToolSteel.HIGH_SPEED,
            call.option("--machine").map(MachineWords::read));
    SpindleSpeed speed = speed(job);
    boolean wanting = speed.fit() == SpindleFit.FASTER || speed.fit() == SpindleFit.SLOWER;
    return Reply.of(wanting, text(speed, call.unit()), data(speed));
  }

  private static CuttingOperation operation(Call call) {
    String said = call.option("--operation").orElse(CuttingOperation.DRILL.word());
    return CuttingOperation.ofWord(said)
        .orElseThrow(
            () ->
                new CommandException(
                    "--operation \""
                        + said
                        + "\" is none; say one of "
                        + Arrays.stream(CuttingOperation.values())
                            .map(CuttingOperation::word)
                            .collect(Collectors.joining(", "))));
  }

  private Length diameter(Call call, CuttingOperation operation) {
    Optional<ThreadCall> thread =
        operation == CuttingOperation.TAP
            ? threads.read(call.operand("SIZE").orElseThrow())
            : Optional.empty();
    return thread
        .map(called -> called.thread().major())
        .orElseGet(() -> tool(call, operation).diameter());
  }

  private DrillSize tool(Call call, CuttingOperation operation) {
    try {
      return DrillWords.read(drills, call, "SIZE");
    } catch (CommandException none) {
      throw operation == CuttingOperation.TAP
          ? ThreadWords.unknown(threads, call.operand("SIZE").orElseThrow())
          : none;
    }
  }

  private SpindleSpeed speed(SpeedJob job) {
    try {
      return speeds.of(job);
    } catch (MeasureException refused) {
      throw new CommandException(refused.getMessage(), refused);
    }
  }

  private static String text(SpindleSpeed speed, LengthUnit unit) {
    SpeedJob job = speed.job();
    StringBuilder text =
        new StringBuilder(
            "%s %s in %s, cutter of %s: %s to %s rpm"
                .formatted(
                    job.operation().word(),
                    LengthFormat.showBoth(job.diameter(), unit),
                    job.material().name(),
                    job.steel().words(),
                    rpm(speed.leastRpm()),
                    rpm(speed.mostRpm())));
    text.append(
        job.machine().isPresent()
            ? "\nSet %s rpm: %s".formatted(rpm(speed.setRpm()), speed.fit().words())
            : "\nBegin at %s rpm; --machine says what yours can do".formatted(rpm(speed.setRpm())));
    Columns columns = new Columns().right(1, 2, 3).row("by", "ft/min", "m/min", "rpm", "source");
    for (SurfaceSpeed row : speed.surfaceSpeeds()) {
      columns.row(
          row.forWhat(),
          range(row.leastFeetPerMinute(), row.mostFeetPerMinute()),
          range(row.leastMetresPerMinute(), row.mostMetresPerMinute()),
          range(rpmOf(row.leastFeetPerMinute(), job), rpmOf(row.mostFeetPerMinute(), job)),
          Figures.source(row.source()));
    }
    text.append("\n\n").append(columns.text());
    speed.notes().forEach(note -> text.append("\n  note: ").append(note));
    return text.append("\nCaution: ").append(Cautions.DRILLING).toString();
  }

  private static double rpmOf(double feetPerMinute, SpeedJob job) {
    return SurfaceSpeed.rpm(feetPerMinute, job.diameter().inches());
  }

  private static String rpm(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }

  private static String range(double least, double most) {
    return rpm(least).equals(rpm(most)) ? rpm(least) : rpm(least) + " to " + rpm(most);
  }

  private static Map<String, Object> data(SpindleSpeed speed) {
    SpeedJob job = speed.job();
    List<Object> sources = speed.surfaceSpeeds().stream().map(row -> data(row, job)).toList();
    return Data.of(
        "operation", job.operation().word(),
        "diameterMm", Data.mm(job.diameter()),
        "diameterIn", Data.in(job.diameter()),
        "material", WorkWords.data(job.material()),
        "cutter", job.steel().words(),
        "leastRpm", Data.rounded(speed.leastRpm(), 3),
        "mostRpm", Data.rounded(speed.mostRpm(), 3),
        "setRpm", Data.rounded(speed.setRpm(), 3),
        "fit", speed.fit().name().toLowerCase(Locale.ROOT).replace('_', '-'),
        "fitMeans", speed.fit().words(),
        "machineLeastRpm", job.machine().map(range -> Data.rounded(range.leastRpm(), 3)),
        "machineMostRpm", job.machine().map(range -> Data.rounded(range.mostRpm(), 3)),
        "surfaceSpeeds", sources,
        "notes", speed.notes(),
        "cautions", List.of(Cautions.DRILLING));
  }

  private static Object data(SurfaceSpeed row, SpeedJob job) {
    return Data.of(
        "for", row.forWhat(),
        "leastFtPerMin", Data.rounded(row.leastFeetPerMinute(), 3),
        "mostFtPerMin", Data.rounded(row.mostFeetPerMinute(), 3),
        "leastMPerMin", Data.rounded(row.leastMetresPerMinute(), 3),
        "mostMPerMin", Data.rounded(row.mostMetresPerMinute(), 3),
        "leastRpm", Data.rounded(rpmOf(row.leastFeetPerMinute(), job), 3),
        "mostRpm", Data.rounded(rpmOf(row.mostFeetPerMinute(), job), 3),
        "source", Figures.sourceData(row.source()));
  }
}
