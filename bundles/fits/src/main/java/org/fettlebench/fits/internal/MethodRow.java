package org.fettlebench.fits.internal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fettlebench.fits.ErrorLaw;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.fits.SeatException;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;

/** Reads a method out of a row: the whole error, the law of each step, or both. */
final class MethodRow {
  private static final Pattern LAW =
      Pattern.compile("(normal|bounded|circle)\\s+([0-9.]+)(?:\\s*x\\s*([0-9.]+))?");
  private static final String REMEDY =
      "write normal 0.10, normal 0.10 x 0.05 (along x and y), bounded 0.05, circle 0.03 or none";

  private final Table.Row row;
  private final List<String> steps;

  private MethodRow(Table.Row row) {
    this.row = row;
    this.steps = parts(row.requiredText("steps"));
  }

  static HoleMethod read(Table.Row row) {
    return new MethodRow(row).method();
  }

  private static List<String> parts(String cell) {
    return Stream.of(cell.split("\\|", -1)).map(String::strip).toList();
  }

  private HoleMethod method() {
    String id = row.requiredText("id");
    String title = row.requiredText("title");
    Optional<String> laws = row.text("laws_mm");
    if (laws.isPresent()) {
      PositionLaw law = added(laws.get());
      checkWhole(law);
      return new HoleMethod(id, title, steps, law, row.source());
    }
    return new HoleMethod(id, title, steps, wholeSigmaMm(), row.source());
  }

  private double wholeSigmaMm() {
    double sigma = row.requiredLength("sigma_mm").millimetres();
    if (!(sigma > 0)) {
      throw wrong("sigma_mm", SeatGuard.mm(sigma) + " is not above 0");
    }
    return sigma;
  }

  private PositionLaw added(String cell) {
    List<String> words = inStep("laws_mm", cell);
    List<Source> sources =
        row.text("standings")
            .map(standings -> inStep("standings", standings).stream().map(this::source).toList())
            .orElse(List.of());
    List<PositionLaw.Part> parts = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      int step = i;
      Source source = sources.isEmpty() ? row.source() : sources.get(i);
      refusing(words.get(i), this::law)
          .ifPresent(law -> parts.add(new PositionLaw.Part(steps.get(step), law, source)));
    }
    return refusing(cell, whole -> new PositionLaw(0, 0, parts));
  }

  private List<String> inStep(String column, String cell) {
    List<String> each = parts(cell);
    if (each.size() != steps.size()) {
      throw wrong(
          column,
          each.size()
              + " parts for "
              + steps.size()
              + " steps; part them by | and write none for a step that brings no error");
    }
    return each;
  }

  private Source source(String words) {
    Standing standing =
        Standing.ofWords(words)
            .orElseThrow(
                () -> wrong("standings", "\"" + words + "\" is no standing; see the header's"));
    return new Source(row.source().citation(), standing);
  }

  private Optional<ErrorLaw> law(String words) {
    if (words.equals("none")) {
      return Optional.empty();
    }
    Matcher law = LAW.matcher(words);
    if (!law.matches() || law.group(1).equals("circle") && law.group(3) != null) {
      throw wrong("laws_mm", "\"" + words + "\" is no law; " + REMEDY);
    }
    double x = number(law.group(2), words);
    double y = law.group(3) == null ? x : number(law.group(3), words);
    return Optional.of(
        switch (law.group(1)) {
          case "normal" -> new ErrorLaw.Normal(x, y);
          case "bounded" -> new ErrorLaw.Bounded(x, y);
          default -> new ErrorLaw.Circle(x);
        });
  }

  private double number(String digits, String words) {
    try {
      return new BigDecimal(digits).doubleValue();
    } catch (NumberFormatException e) {
      throw wrong("laws_mm", "\"" + digits + "\" in \"" + words + "\" is no number; " + REMEDY);
    }
  }

  /** A whole error beside the steps' own must be their sum, as far as it is written. */
  private void checkWhole(PositionLaw law) {
    row.text("sigma_mm")
        .ifPresent(
            written -> {
              double half = Math.pow(10, -new BigDecimal(written).scale()) / 2;
              double sum = law.sigmaPerAxisMm();
              if (!(Math.abs(wholeSigmaMm() - sum) <= half * (1 + 1e-9))) {
                throw wrong(
                    "sigma_mm",
                    written
                        + " mm is not what the laws add up to, "
                        + BigDecimal.valueOf(sum).setScale(4, RoundingMode.HALF_EVEN)
                        + " mm; leave it blank or correct one of them");
              }
            });
  }

  private <T> T refusing(String cell, Function<String, T> reading) {
    try {
      return reading.apply(cell);
    } catch (SeatException e) {
      throw wrong("laws_mm", "\"" + cell + "\": " + e.getMessage());
    }
  }

  private TableFormatException wrong(String column, String what) {
    return new TableFormatException(
        "line " + row.line(), List.of("column " + column + ": " + what));
  }
}
