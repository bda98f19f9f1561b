package org.fettlebench.desktop.castings.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fettlebench.castings.Axis;
import org.fettlebench.measure.Length;

/**
 * Work in hand as a text, finished or not, so that closing loses nothing. One thing a line, its
 * parts separated by tabs; lengths are nanometres, what is no length stands behind an equals sign.
 * A line that cannot be understood is left out.
 */
final class Draft {
  private static final String NEVER_A_LENGTH = "this is no length";

  private Draft() {}

  static String write(Sketch sketch) {
    List<String> lines = new ArrayList<>();
    line(lines, "name", plain(sketch.name()));
    line(lines, "all", write(sketch.cut()), write(sketch.mayBeOut()));
    Sketch.Moves moves = sketch.moves();
    line(
        lines,
        "moves",
        moves.shifts().map(Draft::axes).orElse("held"),
        axes(moves.turns()),
        plain(moves.largestTurn()),
        String.valueOf(sketch.holdsPressure()));
    for (FaceRow row : sketch.rows()) {
      line(
          lines,
          "row",
          plain(row.name()),
          row.looks().name(),
          write(row.finished()),
          write(row.cut()),
          write(row.mayBeOut()));
      line(lines, "centre", write(row.centre()));
      row.readings().forEach(reading -> line(lines, "reading", write(reading)));
    }
    return String.join("\n", lines);
  }

  private static void line(List<String> lines, String... parts) {
    lines.add(String.join("\t", parts));
  }

  private static String plain(String words) {
    return words.replaceAll("\\s", " ");
  }

  private static String axes(Set<Axis> axes) {
    return axes.stream().sorted().map(Axis::word).collect(Collectors.joining());
  }

  private static String write(Entry figure) {
    return figure
        .length()
        .map(length -> String.valueOf(length.nanometres()))
        .orElseGet(() -> figure.blank() ? "" : "=" + plain(figure.typed()));
  }

  private static String write(Reading reading) {
    return String.join(
        "\t",
        write(reading.x()),
        write(reading.y()),
        write(reading.z()),
        write(reading.diameter()));
  }

  static Sketch read(String text) {
    Sketch sketch = Sketch.EMPTY;
    for (String line : text.split("\n")) {
      try {
        sketch = read(sketch, line.split("\t", -1));
      } catch (RuntimeException notUnderstood) {
        // Written by another version, or by hand: the rest is still worth having.
        continue;
      }
    }
    return sketch;
  }

  private static Sketch read(Sketch sketch, String[] parts) {
    int last = sketch.rows().size() - 1;
    return switch (parts[0]) {
      case "name" -> sketch.named(parts[1]);
      case "all" -> sketch.cut(entry(parts[1])).mayBeOut(entry(parts[2]));
      case "moves" ->
          sketch
              .moves(
                  new Sketch.Moves(
                      "held".equals(parts[1]) ? Optional.empty() : Optional.of(axes(parts[1])),
                      axes(parts[2]),
                      parts[3]))
              .holdsPressure(Boolean.parseBoolean(parts[4]));
      case "row" ->
          sketch.row(
              last + 1,
              before ->
                  FaceRow.blank(Looks.valueOf(parts[2]))
                      .named(parts[1])
                      .finished(entry(parts[3]))
                      .cut(entry(parts[4]))
                      .mayBeOut(entry(parts[5])));
      case "centre" -> sketch.row(last, row -> centre(row, parts));
      case "reading" -> sketch.row(last, row -> reading(row, row.readings().size(), parts));
      default -> sketch;
    };
  }

  private static FaceRow centre(FaceRow row, String[] parts) {
    FaceRow read = row;
    for (int column = 0; column < Reading.DIAMETER; column++) {
      read = read.centre(column, entry(parts[column + 1]));
    }
    return read;
  }

  private static FaceRow reading(FaceRow row, int place, String[] parts) {
    FaceRow read = row;
    for (int column = 0; column <= Reading.DIAMETER; column++) {
      read = read.reading(place, column, entry(parts[column + 1]));
    }
    return read;
  }

  private static Set<Axis> axes(String words) {
    return Arrays.stream(Axis.values())
        .filter(axis -> words.contains(axis.word()))
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Axis.class)));
  }

  private static Entry entry(String words) {
    if (words.isEmpty()) {
      return Entry.BLANK;
    }
    return words.startsWith("=")
        ? new Entry(Optional.empty(), words.substring(1), NEVER_A_LENGTH)
        : Entry.of(Length.ofNanometres(Long.parseLong(words)));
  }
}
