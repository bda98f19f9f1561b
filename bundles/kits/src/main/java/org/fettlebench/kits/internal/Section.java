package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.fettlebench.kits.internal.FaultList.At;
import org.fettlebench.measure.Length;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * A table of a file while it is read: gives values by key, keeps what is wrong with them, and knows
 * in the end which keys nobody asked for.
 */
final class Section {
  /** Title of what holds all tables. */
  static final String FILE = "the file";

  /** As long a name as the club's shelf keeps. */
  private static final int LONGEST_NAME = 200;

  private final TomlTable table;
  private final At at;
  private final String title;
  private final Reading reading;
  private final TreeSet<String> asked = new TreeSet<>();

  Section(TomlTable table, At at, String title, Reading reading) {
    this.table = table;
    this.at = at;
    this.title = title;
    this.reading = reading;
  }

  At at() {
    return at;
  }

  String title() {
    return title;
  }

  Reading reading() {
    return reading;
  }

  boolean has(String key) {
    return value(key).isPresent();
  }

  /** Returns where a key stands, or where the table begins when it does not. */
  At at(String key) {
    TomlPosition position = has(key) ? table.inputPositionOf(List.of(key)) : null;
    return position == null ? at : new At(position.line(), position.column());
  }

  Optional<Object> value(String key) {
    asked.add(key);
    return Optional.ofNullable(table.get(List.of(key)));
  }

  Optional<Object> required(String key, String remedy) {
    Optional<Object> value = value(key);
    if (value.isEmpty()) {
      reading.faults().addMissing(at, title + " has no " + key, remedy);
    }
    return value;
  }

  void fault(String key, String wrong, String remedy) {
    reading.faults().add(at(key), value(key).map(Section::shown).orElse(""), wrong, remedy);
  }

  Optional<String> text(String key) {
    return value(key).flatMap(value -> asText(key, value));
  }

  Optional<String> requiredText(String key, String remedy) {
    return required(key, remedy).flatMap(value -> asText(key, value));
  }

  private Optional<String> asText(String key, Object value) {
    if (!(value instanceof String text)) {
      fault(
          key,
          key + " must be a text, not " + kind(value),
          "Put it in quotes: " + key + " = \"...\"");
      return Optional.empty();
    }
    if (text.isBlank()) {
      fault(key, key + " of " + title + " is blank", "Write something, or leave the line out");
      return Optional.empty();
    }
    return Optional.of(text.strip());
  }

  /** Returns a name, which stands on one line of lists and drawings. */
  Optional<String> requiredName(String key, String remedy) {
    return requiredText(key, remedy).filter(text -> isOneLine(key, text));
  }

  /** Returns a text that stands on one line, if it is there. */
  Optional<String> oneLine(String key) {
    return text(key).filter(text -> isOneLine(key, text));
  }

  private boolean isOneLine(String key, String text) {
    String wrong = "";
    if (text.length() > LONGEST_NAME) {
      wrong = key + " has " + text.length() + " characters, at most " + LONGEST_NAME + " fit";
    } else if (text.chars().anyMatch(Character::isISOControl)) {
      wrong = key + " must be one line, without tabs";
    }
    if (!wrong.isEmpty()) {
      fault(key, wrong, "Shorten it to one line");
    }
    return wrong.isEmpty();
  }

  Optional<Boolean> flag(String key) {
    Optional<Object> value = value(key);
    if (value.isPresent() && !(value.get() instanceof Boolean)) {
      fault(key, key + " must be true or false, not " + kind(value.get()), "Write true or false");
      return Optional.empty();
    }
    return value.map(Boolean.class::cast);
  }

  /** Returns a whole number from {@code least} to a million. */
  Optional<Integer> whole(String key, int least) {
    return value(key).flatMap(value -> asWhole(key, value, least));
  }

  Optional<Integer> requiredWhole(String key, int least, String remedy) {
    return required(key, remedy).flatMap(value -> asWhole(key, value, least));
  }

  private Optional<Integer> asWhole(String key, Object value, int least) {
    if (value instanceof Long number && number >= least && number <= 1_000_000) {
      return Optional.of(number.intValue());
    }
    fault(
        key,
        key + " must be a whole number from " + least + " to 1000000",
        "Write for instance " + key + " = " + Math.max(least, 4));
    return Optional.empty();
  }

  /** Returns a number above {@code above} and at most {@code most}. */
  Optional<Double> number(String key, double above, double most) {
    Optional<Object> value = value(key);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (value.get() instanceof Number number
        && number.doubleValue() > above
        && number.doubleValue() <= most) {
      return Optional.of(number.doubleValue());
    }
    fault(
        key,
        key + " must be a number above " + plain(above) + " and up to " + plain(most),
        "Write a number without quotes in that range");
    return Optional.empty();
  }

  Optional<Length> length(String key) {
    return value(key).flatMap(value -> reading.length(at(key), key, value));
  }

  Optional<Length> positive(String key) {
    return positive(key, "Measure it again, or leave it out");
  }

  private Optional<Length> positive(String key, String remedy) {
    Optional<Length> length = length(key);
    if (length.isPresent() && !length.get().isPositive()) {
      fault(key, key + " must be above 0 mm", remedy);
      return Optional.empty();
    }
    return length;
  }

  /** Returns a length that may be nothing, but not less. */
  Optional<Length> notNegative(String key) {
    Optional<Length> length = length(key);
    if (length.isPresent() && length.get().nanometres() < 0) {
      fault(key, key + " must not be below 0 mm", "Measure it again, or leave it out");
      return Optional.empty();
    }
    return length;
  }

  Optional<Length> requiredPositive(String key, String remedy) {
    required(key, remedy);
    return positive(key, remedy);
  }

  Optional<Section> table(String key) {
    Optional<Object> value = value(key);
    if (value.isPresent() && !(value.get() instanceof TomlTable)) {
      fault(key, key + " must be a table, not " + kind(value.get()), "Write " + key + " = { ... }");
      return Optional.empty();
    }
    return value.map(found -> new Section((TomlTable) found, at(key), titleOf(key), reading));
  }

  /** Returns the tables of a list, such as all {@code [[joint]]}. */
  List<Section> tables(String key) {
    List<Section> sections = new ArrayList<>();
    Object value = value(key).orElse(null);
    if (value instanceof TomlArray array) {
      for (int i = 0; i < array.size(); i++) {
        TomlPosition position = array.inputPositionOf(i);
        At place = new At(position.line(), position.column());
        if (array.get(i) instanceof TomlTable each) {
          sections.add(new Section(each, place, named(key, i, each), reading));
        } else {
          reading
              .faults()
              .add(
                  place, array.get(i), "must be a table", "Begin each with a line [[" + key + "]]");
        }
      }
    } else if (value != null) {
      fault(key, key + " must be a list of tables", "Begin each with a line [[" + key + "]]");
    }
    return sections;
  }

  private static String named(String key, int index, TomlTable each) {
    Object name = each.get(List.of("name"));
    return key + " " + (name instanceof String text ? "\"" + text + "\"" : "number " + (index + 1));
  }

  /** Reports the keys that nobody asked for. */
  void done() {
    for (String key : new TreeSet<>(table.keySet())) {
      if (asked.contains(key)) {
        continue;
      }
      TomlPosition position = table.inputPositionOf(List.of(key));
      String remedy =
          Nearest.to(key, asked)
              .map(near -> "Did you mean " + near + "?")
              .orElse("Known keys are " + String.join(", ", asked));
      reading
          .faults()
          .add(
              new At(position.line(), position.column()),
              key,
              "is no key that " + title + " has",
              remedy);
    }
  }

  static String shown(Object value) {
    return value instanceof TomlTable table
        ? table.toMap().keySet().toString()
        : value instanceof TomlArray array ? entries(array) : String.valueOf(value);
  }

  private static String entries(TomlArray array) {
    return array.size() + (array.size() == 1 ? " entry" : " entries");
  }

  private String titleOf(String key) {
    return title.equals(FILE) ? "[" + key + "]" : key + " of " + title;
  }

  static String kind(Object value) {
    if (value instanceof Number) {
      return "a number";
    }
    if (value instanceof Boolean) {
      return "true or false";
    }
    if (value instanceof TomlArray) {
      return "a list";
    }
    return value instanceof TomlTable ? "a table" : value instanceof String ? "a text" : "a date";
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }
}
