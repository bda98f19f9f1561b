package org.fettlebench.kits.internal;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.HeadStyle;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.fits.Spanners;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.ScrewThread;
import org.tomlj.TomlTable;

/** Reads what goes with a head of a seat file: its washer face, a washer under it, a spanner. */
final class HeadParts {
  private static final String WASHER =
      "Write washer = \"washer\" (a style of the tables) or { diameter = \"9 mm\", thickness ="
          + " \"0.8 mm\" }";
  private static final String KINDS = "Write kind = \"ring\", \"open\" or \"socket\"";
  private static final String SPANNER =
      "Write spanner = \"ring\", \"open\" or \"socket\" (one of the tables), or { kind ="
          + " \"ring\", diameter = \"14 mm\" }";

  private final Trade trade;
  private final Spanners spanners;
  private final Section head;

  HeadParts(Trade trade, Spanners spanners, Section head) {
    this.trade = trade;
    this.spanners = spanners;
    this.head = head;
  }

  /** Returns a head with its parts; what is wrong with them is reported. */
  SeatedHead on(SeatedHead bare, Optional<ScrewThread> thread) {
    SeatedHead seated = bare;
    Optional<Length> face = head.positive("washer-face");
    if (face.isPresent()) {
      seated = seated.withBearing(face.get().millimetres());
    }
    Optional<SeatedHead.Washer> washer = washer(thread);
    if (washer.isPresent()) {
      seated = seated.withWasher(washer.get());
    }
    Optional<Spanner> spanner = spanner(bare.acrossFlatsMm());
    return spanner.isPresent() ? seated.withSpanner(spanner.get()) : seated;
  }

  /** Returns the washer that is asked for. */
  Optional<SeatedHead.Washer> washer(Optional<ScrewThread> thread) {
    Optional<Object> value = head.value("washer");
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (value.get() instanceof TomlTable) {
      return head.table("washer").flatMap(HeadParts::measuredWasher);
    }
    Optional<String> style = head.text("washer").map(words -> words.replace(' ', '-'));
    Optional<Head> listed =
        style
            .filter(this::isWasher)
            .flatMap(id -> thread.flatMap(known -> trade.heads().find(id, known)));
    if (style.isPresent() && listed.isEmpty()) {
      head.fault("washer", "is no washer that a table lists for this head's thread", WASHER);
    }
    return listed.flatMap(this::listedWasher);
  }

  private boolean isWasher(String style) {
    return trade.heads().styles().stream()
        .anyMatch(each -> each.id().equals(style) && each.part() == HeadStyle.Part.WASHER);
  }

  private Optional<SeatedHead.Washer> listedWasher(Head washer) {
    if (washer.height().isEmpty()) {
      head.fault("washer", "has no thickness in its table", WASHER);
      return Optional.empty();
    }
    return Optional.of(
        new SeatedHead.Washer(
            washer.title(),
            washer.acrossCorners().millimetres(),
            washer.height().get().millimetres(),
            Expected.doubt(washer.source()).orElse("")));
  }

  private static Optional<SeatedHead.Washer> measuredWasher(Section washer) {
    Optional<Length> diameter = washer.requiredPositive("diameter", WASHER);
    Optional<Length> thickness = washer.requiredPositive("thickness", WASHER);
    String title = washer.oneLine("title").orElse("washer as measured");
    washer.done();
    return diameter.isPresent() && thickness.isPresent()
        ? Optional.of(
            new SeatedHead.Washer(
                title, diameter.get().millimetres(), thickness.get().millimetres(), ""))
        : Optional.empty();
  }

  /** Returns the spanner that must go on, of the tables or as measured. */
  Optional<Spanner> spanner(OptionalDouble acrossFlatsMm) {
    Optional<Object> value = head.value("spanner");
    if (value.isEmpty()) {
      return Optional.empty();
    }
    Optional<Spanner> spanner =
        value.get() instanceof TomlTable
            ? head.table("spanner").flatMap(HeadParts::spanner)
            : head.text("spanner").flatMap(words -> listedSpanner(words, acrossFlatsMm));
    if (acrossFlatsMm.isEmpty()) {
      head.fault("spanner", "has no meaning for a head without flats", "Leave it out");
      return Optional.empty();
    }
    return spanner;
  }

  private Optional<Spanner> listedSpanner(String words, OptionalDouble acrossFlatsMm) {
    Optional<Spanner.Kind> kind = kind(words);
    if (kind.isEmpty()) {
      head.fault("spanner", "is no kind of spanner", SPANNER);
    }
    if (kind.isEmpty() || acrossFlatsMm.isEmpty()) {
      return Optional.empty();
    }
    double flats = acrossFlatsMm.getAsDouble();
    Optional<Spanner> listed = spanners.find(kind.get(), flats);
    if (listed.isEmpty()) {
      String size = Length.ofMillimetres(flats) + " across flats";
      head.fault("spanner", "is in no table for " + size, SPANNER);
    }
    return listed;
  }

  private static Optional<Spanner> spanner(Section section) {
    Optional<String> words = section.requiredText("kind", KINDS);
    Optional<Length> diameter =
        section.requiredPositive(
            "diameter",
            "Write its outside diameter, or an open head's width: diameter = \"18 mm\"");
    OptionalDouble height = SeatFileReader.optional(section.positive("height"));
    double lift = section.notNegative("lift").map(Length::millimetres).orElse(0.0);
    Optional<Spanner.Kind> kind = words.flatMap(HeadParts::kind);
    if (words.isPresent() && kind.isEmpty()) {
      section.fault("kind", "is no kind of spanner", KINDS);
    }
    String title = section.oneLine("title").orElse("");
    String standing = section.oneLine("standing").orElse("as measured");
    section.done();
    return kind.isPresent() && diameter.isPresent()
        ? Optional.of(
            new Spanner(
                kind.get(),
                title.isEmpty() ? kind.get().words() + " as measured" : title,
                diameter.get().millimetres(),
                height,
                lift,
                standing))
        : Optional.empty();
  }

  private static Optional<Spanner.Kind> kind(String words) {
    for (Spanner.Kind kind : Spanner.Kind.values()) {
      if (kind.name().toLowerCase(Locale.ROOT).equals(words)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
