package org.fettlebench.command.internal.thread;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fettlebench.command.Call;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.wires.MeasuringWires;
import org.fettlebench.threads.wires.WireSizes;

/**
 * Which wires are measured over.
 *
 * @param wire the one that was named, or the best of those at hand; empty if nothing was said
 * @param fitting those at hand that fit, the best first
 * @param shanks whether they are drill shanks
 */
record WireChoice(Optional<Length> wire, List<Length> fitting, boolean shanks) {
  private static final int MOST_SHOWN = 6;

  /**
   * Takes the wire as the call says.
   *
   * @param drills asked only for {@code --from-drills}
   * @throws CommandException if it is said in two ways, or none at hand fits
   */
  static WireChoice of(
      Call call, ScrewThread thread, MeasuringWires wires, Supplier<List<Length>> drills) {
    boolean shanks = call.on("--from-drills");
    Optional<String> held = call.option("--held");
    Optional<Length> wire = call.length("--wire");
    if (Stream.of(wire.isPresent(), held.isPresent(), shanks).filter(said -> said).count() > 1) {
      throw new CommandException("say one of --wire, --held and --from-drills");
    }
    if (held.isEmpty() && !shanks) {
      return new WireChoice(wire, List.of(), false);
    }
    List<Length> all = shanks ? drills.get() : lengths(call, held.get());
    List<Length> fitting = wires.choose(thread.form(), thread.pitch(), all);
    if (fitting.isEmpty()) {
      WireSizes sizes = wires.sizes(thread.form(), thread.pitch());
      throw new CommandException(
          "none of %s fits %s: take wires of %s to %s, best %s"
              .formatted(
                  shanks
                      ? Figures.count(all.size(), "size") + " of drills held"
                      : Figures.count(all.size(), "wire"),
                  thread.designation(),
                  sizes.least(),
                  sizes.most(),
                  sizes.best()));
    }
    return new WireChoice(Optional.of(fitting.get(0)), fitting, shanks);
  }

  private static List<Length> lengths(Call call, String list) {
    Optional<LengthUnit> bare =
        call.unit() == LengthUnit.INCH ? Optional.of(LengthUnit.INCH) : Optional.empty();
    return Arrays.stream(list.split(",", -1))
        .map(
            text ->
                bare.map(u -> LengthReader.read(text, u)).orElseGet(() -> LengthReader.read(text)))
        .toList();
  }

  /** Returns what is told of the choice. */
  List<String> lines(LengthUnit unit) {
    List<String> lines = new ArrayList<>();
    if (!fitting.isEmpty()) {
      lines.add(
          "  that fit, best first: "
              + fitting.stream()
                  .limit(MOST_SHOWN)
                  .map(length -> LengthFormat.showBoth(length, unit))
                  .collect(Collectors.joining("; ")));
    }
    if (shanks) {
      lines.add(
          "  note: a shank is taken to be as thick as its drill: measure it, and take three alike");
    }
    return lines;
  }
}
