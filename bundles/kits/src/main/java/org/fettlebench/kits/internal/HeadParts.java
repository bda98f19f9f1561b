package org.fettlebench.kits.internal;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.HeadStyle;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.ScrewThread;
import org.tomlj.TomlTable;

/** Reads what goes with a head of a seat file: its washer face, a washer under it, a spanner. */
final class HeadParts {
  private static final String WASHER =
      "Write washer = \"washer\" (a style of the tables) or { diameter = \"9 mm\", thickness ="
          + " \"0.8 mm\" }";
  private static final String KINDS = "Write kind = \"ring\", \"open\" or \"socket\"";

  private final Trade trade;
  private final Section head;

  HeadParts(Trade trade, Section head) {
    this.trade = trade;
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
    Optional<Spanner> spanner = spanner();
    if (spanner.isPresent() && bare.acrossFlatsMm().isEmpty()) {
      head.fault("spanner", "has no meaning for a round head, which has no flats", "Leave it out");
    }
    return spanner.isPresent() ? seated.withSpanner(spanner.get()) : seated;
  }

  private Optional<SeatedHead.Washer> washer(Optional<ScrewThread> thread) {
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

  private Optional<Spanner> spanner() {
    return head.table("spanner").flatMap(HeadParts::spanner);
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
