package org.fettlebench.command.internal.thread;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.fettlebench.command.internal.Commands;
import org.fettlebench.command.internal.Data;
import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.Threads;
import org.fettlebench.threads.strength.Materials;
import org.fettlebench.threads.strength.ThreadStrength;
import org.fettlebench.threads.wires.MeasuringWires;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Answers a list of threads of any length, row by row. */
@Component(service = Command.class, property = Commands.WORDS + "=thread batch")
public final class ThreadBatch implements Command {
  private static final Usage USAGE =
      Usage.of(
              "thread batch",
              "Works out a list of threads (CSV) of any length, row by row.",
              "thread batch threads.csv --figures limits,stress --out answer.csv")
          .needs("FILE", "list with a column designation; - reads what is piped in")
          .option(
              "--figures", "LIST", BatchFigures.words() + ", parted by commas; limits if not said")
          .option("--class", "CLASS", "for rows that name none; the thread's usual fit if not said")
          .option("--out", "FILE", "where the answer goes; else it is printed")
          .flag("--progress", "tells on the standard error how far it is");

  private final Threads threads;
  private final ThreadClasses classes;
  private final ThreadStrength strength;
  private final MeasuringWires wires;
  private final Materials materials;
  private final Drills drills;
  private final HoleChooser chooser;

  /** Made by the framework. */
  @Activate
  public ThreadBatch(
      @Reference Threads threads,
      @Reference ThreadClasses classes,
      @Reference ThreadStrength strength,
      @Reference MeasuringWires wires,
      @Reference Materials materials,
      @Reference Drills drills,
      @Reference HoleChooser chooser) {
    this.threads = threads;
    this.classes = classes;
    this.strength = strength;
    this.wires = wires;
    this.materials = materials;
    this.drills = drills;
    this.chooser = chooser;
  }

  @Override
  public Usage usage() {
    return USAGE;
  }

  @Override
  public Reply run(Call call) {
    List<BatchFigure> figures =
        new BatchFigures(
                classes,
                strength,
                wires,
                call.option("--class"),
                new BatchTapping(chooser, drills.catalogue()),
                new BatchStrength(strength, materials))
            .named(call.option("--figures").orElse("limits"));
    if (call.json() && call.option("--out").isEmpty()) {
      throw new CommandException(
          "the answer is a list (CSV), not JSON; with --out FILE its count is told as JSON");
    }
    BatchRun run = new BatchRun(threads, figures, call.unit());
    try (BatchReader in = new BatchReader(input(call))) {
      if (call.option("--out").isPresent()) {
        toFile(run, in, call);
      } else {
        run.run(in, call.out(), progress(call));
      }
    } catch (IOException unreadable) {
      throw new CommandException("the list cannot be read: " + unreadable.getMessage(), unreadable);
    }
    return Reply.of(run.refused() > 0, told(run, call), data(run, call));
  }

  private static Optional<PrintStream> progress(Call call) {
    return call.on("--progress") ? Optional.of(call.err()) : Optional.empty();
  }

  private static InputStream input(Call call) throws IOException {
    if (call.operand("FILE").orElseThrow().equals("-")) {
      return call.in();
    }
    Path file = call.file("FILE");
    if (!Files.isRegularFile(file) && !Files.isReadable(file) || Files.isDirectory(file)) {
      throw new CommandException("there is no file " + file + " that can be read");
    }
    return Files.newInputStream(file);
  }

  /** Only a whole answer takes the place of what the file held before. */
  private static void toFile(BatchRun run, BatchReader in, Call call) {
    Path file = call.file("--out");
    Path parent = file.toAbsolutePath().getParent();
    try {
      Path unfinished = Files.createTempFile(parent, file.getFileName().toString(), ".unfinished");
      try {
        try (OutputStream bytes = Files.newOutputStream(unfinished);
            PrintStream out = new PrintStream(bytes, false, StandardCharsets.UTF_8)) {
          run.run(in, out, progress(call));
        }
        Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(unfinished);
      }
    } catch (IOException unwritable) {
      throw new CommandException(
          "the answer cannot be written to " + file + ": " + unwritable, unwritable);
    }
  }

  private static String told(BatchRun run, Call call) {
    return call.option("--out")
        .map(
            file ->
                run.rows()
                    + " rows, "
                    + run.refused()
                    + " of them with an error, in "
                    + file
                    + (run.refused() > 0 ? "; the column error says why" : ""))
        .orElse("");
  }

  private static Object data(BatchRun run, Call call) {
    return Data.of("rows", run.rows(), "refused", run.refused(), "file", call.option("--out"));
  }
}
