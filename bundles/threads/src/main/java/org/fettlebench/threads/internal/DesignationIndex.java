package org.fettlebench.threads.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

  private record Found(Claim claim, ScrewThread thread) {}

  /** A thread with its ways of writing. */
  record Entry(ScrewThread thread, Spellings spellings) {}

  private final Map<String, Found> found = new HashMap<>();
  private final List<Entry> entries = new ArrayList<>();
  private final List<HeldSeries> series;

  private boolean filled;

  /**
   * Takes the series; spelling them out waits for the first question, since many starts ask none.
   */
  DesignationIndex(List<HeldSeries> series) {
    this.series = List.copyOf(series);
  }

  private synchronized void fill() {
    if (!filled) {
      series.forEach(this::add);
      filled = true;
    }
  }

  /** Finds a thread by a designation brought to {@link DesignationText#key}. */
  Optional<ScrewThread> find(String key) {
    fill();
    return Optional.ofNullable(found.get(key)).map(Found::thread);
  }

  List<Entry> entries() {
    fill();
    return entries;
  }

  private void add(HeldSeries held) {
    List<String> names = new ArrayList<>(held.aliases());
    names.add(0, held.series().id());
    List<String> keys = names.stream().map(DesignationText::key).distinct().toList();
    List<Entry> own = new ArrayList<>();
    for (ScrewThread thread : held.series().threads()) {
      own.add(new Entry(thread, Spellings.of(thread, keys)));
    }
    Set<String> ambiguous = ambiguous(own);
    for (Entry entry : own) {
      Spellings ways = entry.spellings();
      boolean unified = entry.thread().form() == ThreadForm.UNIFIED;
      claim(ways.exact(), Claim.EXACT, entry.thread());
      claim(ways.dashed(), unified ? Claim.EXACT : Claim.DASHED_BUT_NOT_UNIFIED, entry.thread());
      ways.loose().stream()
          .filter(way -> !ambiguous.contains(way))
          .forEach(way -> claim(Set.of(way), Claim.LOOSE, entry.thread()));
    }
    entries.addAll(own);
  }

  private void claim(Set<String> ways, Claim claim, ScrewThread thread) {
    for (String way : ways) {
      found.merge(
          way,
          new Found(claim, thread),
          (old, next) -> next.claim().compareTo(old.claim()) < 0 ? next : old);
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
