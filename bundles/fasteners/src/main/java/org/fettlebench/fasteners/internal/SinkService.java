package org.fettlebench.fasteners.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.HeadSink;
import org.fettlebench.fasteners.HeadSinks;
import org.fettlebench.fasteners.HeadStyle;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fasteners.SinkWanted;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.ScrewThread;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Countersinks, counterbores and spot faces, by listed cuts and by the heads' own sizes. */
@Component
public final class SinkService implements HeadSinks {
  private static final String NO_LIST =
      "no table lists the cut: the head's largest size stands; a cutter a little larger goes easier";

  private final Heads heads;
  private final KeptTables<SinkTable> tables;

  /** Takes the tables of all started bundles and reports bad ones against their module. */
  @Activate
  public SinkService(
      BundleContext context,
      @Reference Tables tables,
      @Reference Heads heads,
      @Reference Faults faults) {
    this(tables, heads, KeptTables.reportingTo(faults, context));
  }

  /** Takes tables without a framework. */
  SinkService(Tables tables, Heads heads, BiConsumer<Table, TableFormatException> faulty) {
    this.heads = heads;
    this.tables = new KeptTables<>(tables, SinkTable.KIND, SinkTable::of, faulty);
  }

  @Override
  public HeadSink of(ScrewThread thread, Head head, SinkWanted wanted) {
    Case asked = new Case(thread, head, wanted, wanted.hole().orElse(thread.major()));
    if (head.countersunkDegrees().isPresent()) {
      return countersink(asked, head.countersunkDegrees().get());
    }
    return head.acrossFlats().isPresent() || isWasher(head) ? spotFace(asked) : counterbore(asked);
  }

  private boolean isWasher(Head head) {
    return heads.styles().stream()
        .anyMatch(
            style -> style.id().equals(head.style()) && style.part() == HeadStyle.Part.WASHER);
  }

  /** What is asked, with the hole that counts. */
  private record Case(ScrewThread thread, Head head, SinkWanted wanted, Length hole) {
    List<String> notes() {
      List<String> notes = new ArrayList<>();
      if (wanted.hole().isEmpty()) {
        notes.add("no hole was said: the screw's major diameter is taken");
      }
      if (!head.note().isEmpty()) {
        notes.add(head.note());
      }
      return notes;
    }

    /** Checks that the head bears on something around the hole. */
    void bears(Length diameter) {
      if (!(hole.compareTo(diameter) < 0)) {
        throw new MeasureException(
            "hole %s lets the head of %s fall through: it must be smaller"
                .formatted(both(hole), both(diameter)));
      }
    }
  }

  /** A cone that reaches its listed size where the head's top lies. */
  private HeadSink countersink(Case asked, double degrees) {
    double slope = Math.tan(Math.toRadians(degrees / 2));
    Optional<SinkTable.Listed> listed = listed(asked, asked.wanted().washer());
    Length flush = listed.map(SinkTable.Listed::diameter).orElse(asked.head().acrossCorners());
    asked.bears(flush);
    Length diameter =
        flush.plus(Length.ofMillimetres(2 * asked.wanted().below().millimetres() * slope));
    Length depth = Length.ofMillimetres(diameter.minus(asked.hole()).millimetres() / 2 / slope);
    List<String> notes = asked.notes();
    if (listed.isEmpty()) {
      notes.add("the head's edge is counted as sharp: with a rounded edge it would stand proud");
    }
    if (asked.wanted().washer()) {
      notes.add("a countersunk head takes no plain washer: none is counted");
    }
    return new HeadSink(
        HeadSink.Kind.COUNTERSINK,
        asked.head(),
        asked.hole(),
        diameter,
        diameter,
        Optional.of(degrees),
        depth,
        sources(asked, listed, Optional.empty()),
        notes);
  }

  private HeadSink counterbore(Case asked) {
    Optional<Head> washer = washer(asked);
    Length least = larger(asked.head().acrossCorners(), washer);
    asked.bears(least);
    Optional<SinkTable.Listed> listed = listed(asked, asked.wanted().washer());
    Length own =
        asked
            .head()
            .height()
            .orElseThrow(
                () ->
                    new MeasureException(
                        "the height of a %s is not known: measure it and give it"
                            .formatted(asked.head().title())))
            .plus(washer.flatMap(Head::height).orElse(Length.ZERO))
            .plus(asked.wanted().below());
    List<String> notes = asked.notes();
    Optional<Length> depth = listed.flatMap(SinkTable.Listed::depth);
    if (asked.wanted().below().isPositive()) {
      depth = Optional.empty();
    }
    depth.ifPresent(
        deep ->
            notes.add("by the list the head lies " + both(deep.minus(own)) + " under the face"));
    if (listed.isEmpty()) {
      notes.add(NO_LIST);
    }
    return new HeadSink(
        HeadSink.Kind.COUNTERBORE,
        asked.head(),
        asked.hole(),
        least,
        listed
            .map(SinkTable.Listed::diameter)
            .filter(size -> size.compareTo(least) >= 0)
            .orElse(least),
        Optional.empty(),
        depth.orElse(own),
        sources(asked, listed, washer),
        notes);
  }

  private HeadSink spotFace(Case asked) {
    Optional<Head> washer = washer(asked);
    Length face = asked.head().washerFace().orElse(Length.ZERO);
    Length widest =
        asked.head().acrossCorners().compareTo(face) >= 0 ? asked.head().acrossCorners() : face;
    Length least = larger(widest, washer);
    asked.bears(least);
    List<String> notes = asked.notes();
    notes.add("deep enough to clean the face all round; a spanner or socket needs more room");
    notes.add(NO_LIST);
    return new HeadSink(
        HeadSink.Kind.SPOT_FACE,
        asked.head(),
        asked.hole(),
        least,
        least,
        Optional.empty(),
        asked.wanted().below(),
        sources(asked, Optional.empty(), washer),
        notes);
  }

  private Optional<Head> washer(Case asked) {
    if (!asked.wanted().washer()) {
      return Optional.empty();
    }
    return Optional.of(
        heads
            .find("washer", asked.thread())
            .orElseThrow(
                () ->
                    new MeasureException(
                        "no table lists a washer for %s: measure it and give the head as large as it"
                            .formatted(asked.thread().designation()))));
  }

  private static Length larger(Length head, Optional<Head> washer) {
    return washer.map(Head::acrossCorners).filter(size -> size.compareTo(head) > 0).orElse(head);
  }

  private Optional<SinkTable.Listed> listed(Case asked, boolean washer) {
    // The suite's own tables come first, and a club's goes before them.
    return tables.now().stream()
        .flatMap(table -> table.find(asked.head().style(), asked.thread(), washer).stream())
        .reduce((suites, clubs) -> clubs);
  }

  private static String both(Length length) {
    return LengthFormat.showBoth(length, LengthUnit.MILLIMETRE);
  }

  private static List<Source> sources(
      Case asked, Optional<SinkTable.Listed> listed, Optional<Head> washer) {
    List<Source> sources = new ArrayList<>();
    sources.add(asked.head().source());
    listed.map(SinkTable.Listed::source).ifPresent(sources::add);
    washer.map(Head::source).ifPresent(sources::add);
    return sources.stream().distinct().toList();
  }
}
