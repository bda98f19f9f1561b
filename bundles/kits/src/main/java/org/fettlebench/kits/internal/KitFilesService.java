package org.fettlebench.kits.internal;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.HoleMethods;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.Seats;
import org.fettlebench.fits.Spanners;
import org.fettlebench.kits.CastingFile;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.PatternFile;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.kits.internal.FaultList.At;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;

/** Reads kit, seat, pattern and casting files, which are TOML. */
@Component
public class KitFilesService implements KitFiles {
  private static final At START = new At(1, 1);

  private final Trade trade;
  private final Spanners spanners;

  /** Takes what the names in a file must be known to. */
  @Activate
  public KitFilesService(
      @Reference Threads threads,
      @Reference Heads heads,
      @Reference Drills drills,
      @Reference HoleChooser holes,
      @Reference HoleMethods methods,
      @Reference Seats seats,
      @Reference Spanners spanners) {
    this.trade = new Trade(threads, heads, drills, holes, methods, seats);
    this.spanners = spanners;
  }

  @Override
  public String text(Path file) {
    return TextCheck.read(file);
  }

  @Override
  public Kit readKit(String file, String text) {
    return read(file, text, new KitReader(trade, spanners)::read);
  }

  @Override
  public SeatQuestion readSeat(String file, String text) {
    return readSeatFile(file, text).question();
  }

  @Override
  public SeatFile readSeatFile(String file, String text) {
    return read(file, text, new SeatFileReader(trade, spanners)::read);
  }

  @Override
  public String writeSeat(SeatFile file, LengthUnit unit) {
    return SeatFileText.of(file, unit);
  }

  @Override
  public PatternFile readPattern(String file, String text) {
    return readPattern(file, text, UnaryOperator.identity());
  }

  @Override
  public PatternFile readPattern(String file, String text, UnaryOperator<HoleMethod> asKnown) {
    return read(file, text, new PatternFileReader(trade, asKnown)::read);
  }

  @Override
  public CastingFile readCasting(String file, String text) {
    return read(file, text, new CastingFileReader()::read);
  }

  @Override
  public String writeCasting(CastingFile file, LengthUnit unit) {
    return CastingFileText.of(file, unit);
  }

  private static <T> T read(String file, String text, Function<Section, Optional<T>> reader) {
    TomlParseResult toml = parse(file, TextCheck.check(file, text));
    FaultList syntax = new FaultList(file);
    for (TomlParseError error : toml.errors()) {
      syntax.add(
          new At(error.position().line(), error.position().column()),
          "",
          error.getMessage(),
          error.getMessage().contains("previously defined")
              ? "Leave one of the two out"
              : "Write it as TOML: key = \"text\", key = 3, [table], [[table of a list]]");
    }
    FaultList faults = new FaultList(file);
    Optional<T> read = reader.apply(new Section(toml, START, Section.FILE, new Reading(faults)));
    faults.besides(syntax).throwIfAny();
    return read.orElseThrow(
        () -> new IllegalStateException(file + " was neither read nor refused"));
  }

  private static TomlParseResult parse(String file, String text) {
    try {
      return Toml.parse(text);
    } catch (StackOverflowError tooDeep) {
      FaultList faults = new FaultList(file);
      faults.add(
          START,
          "",
          "the file's lists lie too deep in one another to be read",
          "A list of points is two deep, cavities are three; check the brackets");
      faults.throwIfAny();
      throw new IllegalStateException("a fault was added", tooDeep);
    }
  }
}
