package org.fettlebench.benchmarks;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fettlebench.command.Call;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;

/**
 * The call {@code thread batch - --figures FIGURES} without a command line around it.
 *
 * @param figures what is asked of each thread
 * @param in the list
 * @param out where the answer goes
 */
record BatchCall(String figures, InputStream in, PrintStream out) implements Call {
  @Override
  public Optional<String> operand(String name) {
    return Optional.of("-");
  }

  @Override
  public List<String> operands(String name) {
    return List.of("-");
  }

  @Override
  public Optional<String> option(String name) {
    return name.equals("--figures") ? Optional.of(figures) : Optional.empty();
  }

  @Override
  public boolean on(String name) {
    return false;
  }

  @Override
  public Optional<Integer> whole(String name, int least, int most) {
    return Optional.empty();
  }

  @Override
  public Optional<Double> number(String name, double above, double most) {
    return Optional.empty();
  }

  @Override
  public Optional<Length> length(String name) {
    return Optional.empty();
  }

  @Override
  public Path file(String name) {
    throw new UnsupportedOperationException(name);
  }

  @Override
  public String text(String name) {
    throw new UnsupportedOperationException(name);
  }

  @Override
  public PrintStream err() {
    return out;
  }

  @Override
  public boolean json() {
    return false;
  }

  @Override
  public LengthUnit unit() {
    return LengthUnit.MILLIMETRE;
  }
}
