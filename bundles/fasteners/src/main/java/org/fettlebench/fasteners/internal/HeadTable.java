package org.fettlebench.fasteners.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.HeadStyle;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.threads.ScrewThread;

/** One table of kind {@code heads}, given its meaning: one style for the threads of some series. */
final class HeadTable {
  /** Listed and calculated majors of one size differ by rounding only; sizes by far more. */
  static final Length SAME_MAJOR = Length.ofMillimetres(0.005);

  private static final double COS_30 = Math.sqrt(3) / 2;

  private final HeadStyle style;
  private final Set<String> series;
  private final List<Entry> entries;

  /** A row: the head without the thread's name on it, and the major diameter it belongs to. */
  private record Entry(Length major, Head head) {}

  private HeadTable(HeadStyle style, Set<String> series, List<Entry> entries) {
    this.style = style;
    this.series = series;
    this.entries = entries;
  }

  /**
   * Reads a table.
   *
   * @throws TableFormatException naming all faulty lines
   */
  static HeadTable of(Table table) {
    HeadStyle style =
        new HeadStyle(
            table.requiredHeader("style"), table.requiredHeader("style-title"), part(table));
    List<Entry> entries = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (Table.Row row : table.rows()) {
      try {
        entries.add(entry(table, style, row));
      } catch (TableFormatException faulty) {
        faults.add(faulty.getMessage());
      }
    }
    if (!faults.isEmpty()) {
      throw new TableFormatException("heads " + table.id(), faults);
    }
    return new HeadTable(style, Set.of(table.requiredHeader("series").split("[ ,]+")), entries);
  }

  HeadStyle style() {
    return style;
  }

  /** Returns the head for a thread, if its series and major diameter are listed. */
  Optional<Head> find(ScrewThread thread) {
    if (!series.contains(thread.series())) {
      return Optional.empty();
    }
    return entries.stream()
        .filter(entry -> entry.major().minus(thread.major()).abs().compareTo(SAME_MAJOR) <= 0)
        .findFirst()
        .map(entry -> named(entry.head(), thread));
  }

  private Head named(Head head, ScrewThread thread) {
    return new Head(
        head.style(),
        thread.designation() + " " + style.title(),
        thread.designation(),
        head.acrossFlats(),
        head.acrossCorners(),
        head.height(),
        head.washerFace(),
        head.source(),
        head.note(),
        head.countersunkDegrees());
  }

  private static HeadStyle.Part part(Table table) {
    String word = table.requiredHeader("part");
    return Stream.of(HeadStyle.Part.values())
        .filter(part -> part.name().toLowerCase(Locale.ROOT).equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new TableFormatException(
                    "heads " + table.id(),
                    List.of("'part: " + word + "' must be one of head, nut, washer")));
  }

  private static Entry entry(Table table, HeadStyle style, Table.Row row) {
    Optional<Length> flats = size(row, "across_flats");
    Optional<Length> corners = size(row, "across_corners").or(() -> size(row, "diameter"));
    String note = note(table, row);
    if (flats.isEmpty() && corners.isEmpty()) {
      throw fault(row, "gives neither across_flats nor diameter: fill one of them");
    }
    if (flats.isPresent() && corners.isEmpty()) {
      note = join(note, "across corners = across flats / cos 30°, sharp corners");
    }
    Length sweep =
        corners.orElseGet(() -> Length.ofMillimetres(flats.orElseThrow().millimetres() / COS_30));
    if (flats.isPresent() && sweep.compareTo(flats.get()) < 0) {
      throw fault(row, "has across corners below across flats: check which is which");
    }
    Length major = size(row, "major").orElseThrow(() -> fault(row, "gives no major_mm, major_in"));
    Head head =
        new Head(
            style.id(),
            style.title(),
            row.requiredText("size"),
            flats,
            sweep,
            size(row, "height"),
            size(row, "washer_face"),
            row.source(),
            note,
            countersunkDegrees(table));
    return new Entry(major, head);
  }

  private static Optional<Double> countersunkDegrees(Table table) {
    String words = table.header().getOrDefault("countersunk-degrees", "");
    if (words.isEmpty()) {
      return Optional.empty();
    }
    if (!words.matches("\\d{2,3}(\\.\\d+)?") || !(Double.parseDouble(words) < 180)) {
      throw new TableFormatException(
          "heads " + table.id(),
          List.of("'countersunk-degrees: " + words + "' must be an angle from 10 to below 180"));
    }
    return Optional.of(Double.valueOf(words));
  }

  private static String note(Table table, Table.Row row) {
    return join(row.text("note").orElse(""), table.header().getOrDefault("note", ""));
  }

  private static String join(String first, String second) {
    return first.isEmpty() || second.isEmpty() ? first + second : first + "; " + second;
  }

  /** Returns a size above 0, in whichever unit its column is. */
  static Optional<Length> size(Table.Row row, String column) {
    Optional<Length> size = row.length(column + "_mm").or(() -> row.length(column + "_in"));
    if (size.isPresent() && !size.get().isPositive()) {
      throw fault(row, "column " + column + ": " + size.get() + " is not above 0");
    }
    return size;
  }

  static TableFormatException fault(Table.Row row, String what) {
    return new TableFormatException("line " + row.line(), List.of(what));
  }
}
