package org.fettlebench.command.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Usage;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.LengthUnit;

/** A call whose words were taken apart. */
final class ParsedCall implements Call {
  private final Usage usage;
  private final Map<String, List<String>> values;
  private final Asked asked;
  private final Place place;
  private final PrintStream out;

  ParsedCall(
      Usage usage, Map<String, List<String>> values, Asked asked, Place place, PrintStream out) {
    this.usage = usage;
    this.values = Map.copyOf(values);
    this.asked = asked;
    this.place = place;
    this.out = out;
  }

  @Override
  public Optional<String> operand(String name) {
    return value(name);
  }

  @Override
  public List<String> operands(String name) {
    known(name);
    return values.getOrDefault(name, List.of());
  }

  @Override
  public Optional<String> option(String name) {
    return value(name);
  }

  @Override
  public boolean on(String name) {
    return value(name).isPresent();
  }

  @Override
  public Optional<Integer> whole(String name, int least, int most) {
    return value(name).map(text -> whole(name, text, least, most));
  }

  private static int whole(String name, String text, int least, int most) {
    // At most nine figures fit an int whatever they are.
    if (text.matches("[+-]?[0-9]{1,9}")) {
      int value = Integer.parseInt(text);
      if (value >= least && value <= most) {
        return value;
      }
    }
    throw new CommandException(Messages.notWhole(name, text, least, most));
  }

  @Override
  public Optional<Double> number(String name, double above, double most) {
    return value(name).map(text -> number(name, text, above, most));
  }

  private static double number(String name, String text, double above, double most) {
    if (text.matches("[+-]?([0-9]+(\\.[0-9]*)?|\\.[0-9]+)")) {
      double value = Double.parseDouble(text);
      if (value > above && value <= most) {
        return value;
      }
    }
    throw new CommandException(Messages.notNumber(name, text, shortly(above), shortly(most)));
  }

  private static String shortly(double value) {
    return Data.rounded(value, 6).toPlainString();
  }

  @Override
  public Optional<Length> length(String name) {
    return value(name).map(this::lengthOf);
  }

  private Length lengthOf(String text) {
    return asked
        .unit()
        .map(unit -> LengthReader.read(text, unit))
        .orElseGet(() -> LengthReader.read(text));
  }

  @Override
  public Path file(String name) {
    String file = value(name).orElseThrow(() -> new CommandException(Messages.fileMissing(name)));
    try {
      return Path.of(place.folder()).resolve(file).normalize();
    } catch (InvalidPathException e) {
      throw new CommandException(Messages.notFileName(file), e);
    }
  }

  @Override
  public String text(String name) {
    if (value(name).filter("-"::equals).isPresent()) {
      return decoded("what is piped in", this::readIn);
    }
    Path file = file(name);
    if (Files.isDirectory(file)) {
      throw new CommandException(Messages.isFolder(file.toString()));
    }
    if (!Files.exists(file)) {
      throw new CommandException(Messages.noSuchFile(file.toString()));
    }
    return decoded(value(name).orElseThrow(), () -> Files.readAllBytes(file));
  }

  private byte[] readIn() throws IOException {
    return place.in().readAllBytes();
  }

  private interface Bytes {
    byte[] read() throws IOException;
  }

  private static String decoded(String file, Bytes bytes) {
    try {
      String text = Utf8.read(file, bytes.read());
      // Some editors put a mark before the first letter, which no reader expects.
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (IOException e) {
      throw new CommandException(Messages.unreadable(file, String.valueOf(e.getMessage())), e);
    }
  }

  @Override
  public InputStream in() {
    return place.in();
  }

  @Override
  public PrintStream out() {
    return out;
  }

  @Override
  public PrintStream err() {
    return place.err();
  }

  @Override
  public boolean json() {
    return asked.json();
  }

  @Override
  public LengthUnit unit() {
    return asked.unit().orElse(LengthUnit.MILLIMETRE);
  }

  private Optional<String> value(String name) {
    known(name);
    return Optional.ofNullable(values.get(name)).map(words -> String.join(" ", words));
  }

  private void known(String name) {
    boolean known =
        usage.operands().stream().anyMatch(operand -> operand.name().equals(name))
            || usage.options().stream().anyMatch(option -> option.name().equals(name));
    if (!known) {
      throw new IllegalArgumentException("the usage of \"" + usage.words() + "\" has no " + name);
    }
  }
}
