package org.fettlebench.kits.internal;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.HeadStyle;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fits.HoleMethods;
import org.fettlebench.fits.Seats;
import org.fettlebench.kits.Fastener;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;

/** What the trade knows: the services that this bundle asks. */
record Trade(
    Threads threads,
    Heads heads,
    Drills drills,
    HoleChooser holes,
    HoleMethods methods,
    Seats seats) {

  /** A fastener without a head; a style that no table of heads needs to have. */
  static final String STUD = "stud";

  /** Other usual ways of writing a style; the id follows. */
  private static final Map<String, String> ALSO =
      Map.ofEntries(
          Map.entry("hex", "hexagon"),
          Map.entry("hex head", "hexagon"),
          Map.entry("hexagon head", "hexagon"),
          Map.entry("small hex", "small-hexagon"),
          Map.entry("small head hexagon", "small-hexagon"),
          Map.entry("cap", "socket-cap"),
          Map.entry("socket", "socket-cap"),
          Map.entry("cheese head", "cheese"),
          Map.entry("round head", "round"),
          Map.entry("nut", "hexagon-nut"),
          Map.entry("hex nut", "hexagon-nut"),
          Map.entry("small hex nut", "small-hexagon-nut"));

  /** Returns the known styles: words as people write them, and the id. */
  Map<String, String> styleWords() {
    Map<String, String> words = new TreeMap<>();
    List<String> ids = styles();
    ids.forEach(id -> words.put(id.replace('-', ' '), id));
    ids.forEach(id -> words.put(id, id));
    heads.styles().forEach(style -> words.put(style.title().toLowerCase(Locale.ROOT), style.id()));
    ALSO.forEach(
        (also, id) -> {
          if (ids.contains(id)) {
            words.putIfAbsent(also, id);
          }
        });
    return words;
  }

  /** Returns the ids of all known styles, those of the tables first. */
  List<String> styles() {
    return Stream.concat(heads.styles().stream().map(HeadStyle::id), Stream.of(STUD))
        .distinct()
        .toList();
  }

  /** Returns what to write in place of a designation that no series has. */
  String nearThreads(String designation) {
    Optional<String> other = threads.refusal(designation);
    if (other.isPresent()) {
      return other.get();
    }
    List<String> near =
        threads.near(designation, 3).stream().map(ScrewThread::designation).distinct().toList();
    return near.isEmpty()
        ? "Write it as 2 BA, M6, 1/4 BSF, 3/16 x 40 ME or 1/4-20 UNC"
        : "Did you mean " + String.join(", ", near) + "?";
  }

  /** Returns the usual designation of a thread, or the text itself when no series has it. */
  String canonical(String designation) {
    return threads.find(designation).map(ScrewThread::designation).orElse(designation.strip());
  }

  /** Returns what sits on the seat: a screw's head, or a stud's nut. */
  Optional<Head> seatedHead(Fastener fastener, ScrewThread thread) {
    return fastener.style().equals(STUD)
        ? heads.find("hexagon-nut", thread)
        : head(fastener, thread);
  }

  /** Returns the head of a fastener; absent for studs and for what no table has. */
  Optional<Head> head(Fastener fastener, ScrewThread thread) {
    return fastener.style().equals(STUD) ? Optional.empty() : heads.find(fastener.style(), thread);
  }
}
