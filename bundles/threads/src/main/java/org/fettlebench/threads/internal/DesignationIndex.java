package org.fettlebench.threads.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;

/** Threads by every way of writing them; what is ambiguous is settled as the service promises. */
final class DesignationIndex {
  /** How strong a claim to a way of writing is; the lower wins, then the earlier series. */
  private enum Claim {
    EXACT,
    DASHED_BUT_NOT_UNIFIED,
    LOOSE
  }

  /** A claim; of equal ones that of the earlier series stands. */
  private record Found(Claim claim, int seriesAt, ScrewThread thread) {
    private boolean beats(Found other) {
      int stronger = claim.compareTo(other.claim);
      return stronger < 0 || stronger == 0 && seriesAt < other.seriesAt;
    }
  }

  /** A thread with its ways of writing. */
  record Entry(ScrewThread thread, Spellings spellings) {}

  /** A series with its names as they are found in what is typed. */
  private record Named(HeldSeries held, List<String> keys) {
    boolean isIn(String key) {
      return keys.stream().anyMatch(key::contains);
    }

    static Named of(HeldSeries held) {
      return new Named(
          held,
          Stream.concat(Stream.of(held.series().id()), held.aliases().stream())
              .map(DesignationText::key)
              .distinct()
              .toList());
    }
  }

  /** Letters that stand in a designation without the name of its series: M6x0.75. */
  private static final String NAMELESS_LETTERS = "mx";

  private final Map<String, Found> found = new HashMap<>();
  private final List<Named> series;
  private final List<List<Entry>> entries;

  /**
   * Takes the series; each is spelt out when a question may be about it, since that takes long and
   * most calls ask for one thread.
   */
  DesignationIndex(List<HeldSeries> series) {
    this.series = series.stream().map(Named::of).toList();
    this.entries = new ArrayList<>(Collections.nCopies(series.size(), List.of()));
  }

  /** Finds a thread by a designation brought to {@link DesignationText#key}. */
  synchronized Optional<ScrewThread> find(String key) {
    boolean named =
        key.chars().anyMatch(c -> Character.isLetter(c) && NAMELESS_LETTERS.indexOf(c) < 0);
    for (int i = 0; i < series.size(); i++) {
      if (entries.get(i).isEmpty() && (!named || series.get(i).isIn(key))) {
        spell(i);
      }
    }
    return Optional.ofNullable(found.get(key)).map(Found::thread);
  }

  synchronized List<Entry> entries() {
    for (int i = 0; i < series.size(); i++) {
      spell(i);
    }
    return entries.stream().flatMap(List::stream).toList();
  }

  private void spell(int seriesAt) {
    if (!entries.get(seriesAt).isEmpty()) {
      return;
    }
    List<Entry> own = new ArrayList<>();
    Named named = series.get(seriesAt);
    for (ScrewThread thread : named.held().series().threads()) {
      own.add(new Entry(thread, Spellings.of(thread, named.keys())));
    }
    Set<String> ambiguous = ambiguous(own);
    for (Entry entry : own) {
      Spellings ways = entry.spellings();
      boolean unified = entry.thread().form() == ThreadForm.UNIFIED;
      Claim dashed = unified ? Claim.EXACT : Claim.DASHED_BUT_NOT_UNIFIED;
      claim(ways.exact(), new Found(Claim.EXACT, seriesAt, entry.thread()));
      claim(ways.dashed(), new Found(dashed, seriesAt, entry.thread()));
      Set<String> loose = new HashSet<>(ways.loose());
      loose.removeAll(ambiguous);
      claim(loose, new Found(Claim.LOOSE, seriesAt, entry.thread()));
    }
    entries.set(seriesAt, List.copyOf(own));
  }

  private void claim(Set<String> ways, Found claim) {
    for (String way : ways) {
      found.merge(way, claim, (old, next) -> next.beats(old) ? next : old);
    }
  }

  /** Ways that fit several threads of one series, such as 3/8 ME with two pitches. */
  private static Set<String> ambiguous(List<Entry> own) {
    Set<String> seen = new HashSet<>();
    Set<String> twice = new HashSet<>();
    for (Entry entry : own) {
      entry.spellings().loose().stream().filter(way -> !seen.add(way)).forEach(twice::add);
    }
    return twice;
  }
}
