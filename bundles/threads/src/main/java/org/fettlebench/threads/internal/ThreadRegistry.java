package org.fettlebench.threads.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.fettlebench.measure.Length;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.DiameterLimits;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.ThreadLimits;
import org.fettlebench.threads.ThreadSeries;
import org.fettlebench.threads.Threads;
import org.fettlebench.threads.internal.limits.LimitRules;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Keeps the series made from the tables of the moment; makes them anew when the tables change. */
@Component(service = {Threads.class, ThreadLimits.class, ThreadClasses.class})
public final class ThreadRegistry implements Threads, ThreadLimits, ThreadClasses {

  /**
   * All that was made from the tables of a moment.
   *
   * @param asked answers given: a stock has few threads, and they are asked for again and again
   */
  private record Snapshot(
      long revision,
      List<ThreadSeries> series,
      DesignationIndex index,
      Map<String, Optional<ThreadCall>> asked,
      Map<String, String> limitRules,
      List<Table> limitTables,
      LimitRules rules) {

    Optional<String> rule(ScrewThread thread) {
      return Optional.ofNullable(limitRules.get(thread.series()));
    }
  }

  private static final int MOST_KEPT = 2_000;

  private final Tables tables;
  private final BiConsumer<Table, RuntimeException> faulty;
  // Made when first asked for: a start asks for few threads.
  private Optional<Snapshot> snapshot = Optional.empty();

  /** Takes the tables of all started bundles and reports bad ones against their module. */
  @Activate
  public ThreadRegistry(BundleContext context, @Reference Tables tables, @Reference Faults faults) {
    this(
        tables,
        (table, fault) ->
            faults.report(
                owner(context, table), "reading " + table.kind() + " " + table.id(), fault));
  }

  /**
   * Takes tables without a framework.
   *
   * @param faulty told of each table that cannot be used
   */
  public ThreadRegistry(Tables tables, BiConsumer<Table, RuntimeException> faulty) {
    this.tables = tables;
    this.faulty = faulty;
  }

  private static Object owner(BundleContext context, Table table) {
    return Arrays.stream(context.getBundles())
        .filter(bundle -> table.module().equals(bundle.getSymbolicName()))
        .findFirst()
        .orElse(context.getBundle());
  }

  @Override
  public List<ThreadSeries> series() {
    return now().series();
  }

  @Override
  public Optional<ScrewThread> find(String designation) {
    // Whoever asks for a thread alone must not lose a hand or a length unawares.
    return read(designation)
        .filter(call -> !call.leftHand() && call.length().isEmpty())
        .map(ThreadCall::thread);
  }

  @Override
  public Optional<ThreadCall> read(String designation) {
    Snapshot now = now();
    if (designation.length() > DesignationText.LONGEST) {
      return Optional.empty();
    }
    Optional<ThreadCall> known = now.asked().get(designation);
    if (known == null) {
      known = read(designation, now.index());
      if (now.asked().size() >= MOST_KEPT) {
        now.asked().clear();
      }
      now.asked().put(designation, known);
    }
    return known;
  }

  /** As written; else without a hand; else without a length behind it. */
  private static Optional<ThreadCall> read(String designation, DesignationIndex index) {
    Optional<ThreadCall> plain = readPlain(designation, index);
    if (plain.isPresent()) {
      return plain;
    }
    CallText text = CallText.of(designation);
    Optional<ThreadCall> handed =
        text.hand() ? readPlain(text.rest(), index) : Optional.<ThreadCall>empty();
    if (handed.isPresent()) {
      return handed.map(
          call ->
              new ThreadCall(call.thread(), call.threadClass(), text.leftHand(), Optional.empty()));
    }
    return text.length()
        .flatMap(
            behind ->
                readPlain(behind.thread(), index)
                    .flatMap(
                        call ->
                            behind
                                .of(call.thread())
                                .map(
                                    length ->
                                        new ThreadCall(
                                            call.thread(),
                                            call.threadClass(),
                                            text.leftHand(),
                                            Optional.of(length)))));
  }

  private static Optional<ThreadCall> readPlain(String designation, DesignationIndex index) {
    ClassText parted = DesignationText.parted(designation);
    String key = DesignationText.keyOf(parted.thread());
    return index
        .find(key)
        .or(() -> ThreadsByRule.find(key))
        .map(thread -> new ThreadCall(thread, parted.threadClass()));
  }

  @Override
  public List<ScrewThread> near(String designation, int most) {
    List<ScrewThread> near = NearMisses.of(designation, most, now().index().entries());
    // 10/32 and 1/4/20 are slips for a dash.
    int slash = designation.lastIndexOf('/');
    Optional<ScrewThread> dashed =
        slash < 0
            ? Optional.empty()
            : find(designation.substring(0, slash) + "-" + designation.substring(slash + 1));
    return dashed.isEmpty()
        ? near
        : Stream.concat(dashed.stream(), near.stream()).distinct().limit(most).toList();
  }

  @Override
  public Optional<String> refusal(String designation) {
    return OtherThreads.refusal(DesignationText.key(designation))
        .or(() -> ClassSlip.refusal(designation, this));
  }

  @Override
  public Optional<DiameterLimits> minorOfNut(ScrewThread thread) {
    Snapshot now = now();
    return now.rule(thread)
        .flatMap(rule -> MinorOfNut.limits(rule, thread, now.rules(), now.limitTables()));
  }

  @Override
  public List<String> classes(ScrewThread thread) {
    Snapshot now = now();
    return now.rules().classes(now.rule(thread), thread);
  }

  @Override
  public List<LimitsOfThread> limits(ScrewThread thread, String threadClass) {
    Snapshot now = now();
    return now.rules().limits(now.rule(thread), thread, threadClass, Optional.empty());
  }

  @Override
  public List<LimitsOfThread> limits(ScrewThread thread, String threadClass, Length engagement) {
    Snapshot now = now();
    return now.rules().limits(now.rule(thread), thread, threadClass, Optional.of(engagement));
  }

  private synchronized Snapshot now() {
    // The revision is taken before the tables, so a change in between is read again next time.
    long revision = tables.revision();
    if (snapshot.filter(made -> made.revision() == revision).isEmpty()) {
      snapshot = Optional.of(read(revision));
    }
    return snapshot.orElseThrow();
  }

  private Snapshot read(long revision) {
    List<HeldSeries> held = new ArrayList<>();
    for (Table table : tables.ofKind(SeriesReader.KIND)) {
      try {
        held.add(SeriesReader.read(table));
      } catch (RuntimeException refused) {
        faulty.accept(table, refused);
      }
    }
    // A stable sort: series without an order, such as a club's, stay behind and as they came.
    held.sort(Comparator.comparingInt(HeldSeries::order));
    Map<String, String> rules = new HashMap<>();
    held.forEach(one -> one.limits().ifPresent(r -> rules.putIfAbsent(one.series().id(), r)));
    ThreadsByRule.LIMITS.forEach(rules::putIfAbsent);
    List<Table> sound = limitTables();
    List<Table> all = new ArrayList<>(sound);
    LimitRules.KINDS.stream()
        .filter(kind -> !kind.equals(MinorOfNut.KIND))
        .forEach(kind -> all.addAll(tables.ofKind(kind)));
    return new Snapshot(
        revision,
        held.stream().map(HeldSeries::series).toList(),
        new DesignationIndex(held),
        new ConcurrentHashMap<>(),
        rules,
        sound,
        new LimitRules(all));
  }

  /** Checks the tables of limits now, so that a faulty one is reported once and not used. */
  private List<Table> limitTables() {
    List<Table> sound = new ArrayList<>();
    for (Table table : tables.ofKind(MinorOfNut.KIND)) {
      try {
        for (Table.Row row : table.rows()) {
          row.requiredText("class");
          row.requiredLength("pitch_mm");
          row.requiredLength("tolerance_mm");
        }
        sound.add(table);
      } catch (RuntimeException refused) {
        faulty.accept(table, refused);
      }
    }
    return sound;
  }
}
