package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.HeadStyle;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Verdict;
import org.fettlebench.kits.Fastener;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointReport.Substitute;
import org.fettlebench.kits.internal.FastenerPool.Box;
import org.fettlebench.threads.ScrewThread;

/** Finds fasteners in stock that would do in place of the kit's, least change first. */
final class Substitutes {
  /** More would not be read. */
  private static final int MOST = 6;

  private final Trade trade;
  private final LengthRule lengths;

  /** Answers for one joint by thread and style: the length does not matter to a seat. */
  private final Map<List<String>, Optional<SeatAnswer>> seated = new HashMap<>();

  Substitutes(Trade trade) {
    this.trade = trade;
    this.lengths = new LengthRule(trade.heads());
  }

  /**
   * A substitute with its rank.
   *
   * @param substitute for the report
   * @param change what it changes
   * @param better whether it serves better than the kit's own and may be taken without asking
   */
  record Ranked(Substitute substitute, Change change, boolean better) {
    private Change.Rank rank() {
      return change.rank();
    }
  }

  List<Ranked> of(Exam exam, FastenerPool pool) {
    if (exam.known().isEmpty()) {
      return List.of();
    }
    Map<Fastener, List<Box>> kinds = new LinkedHashMap<>();
    for (Box box : pool.freeStock()) {
      if (!pool.same(box.fastener(), exam.joint().fastener())) {
        kinds.computeIfAbsent(box.fastener(), kind -> new ArrayList<>()).add(box);
      }
    }
    List<Ranked> found = new ArrayList<>();
    seated.clear();
    kinds.forEach((kind, boxes) -> ranked(exam, kind, boxes).ifPresent(found::add));
    found.sort(
        Comparator.comparing((Ranked each) -> !each.better())
            .thenComparing(Ranked::rank)
            .thenComparing(each -> !each.change().sameHead())
            .thenComparing(each -> each.change().lengthDifference())
            .thenComparing(Substitutes::verdict)
            .thenComparing(each -> each.substitute().fastener().title()));
    return found.stream().limit(MOST).toList();
  }

  private static Verdict verdict(Ranked each) {
    return each.substitute().after().map(SeatAnswer::verdict).orElse(Verdict.CLEARS);
  }

  private Optional<Ranked> ranked(Exam exam, Fastener kind, List<Box> boxes) {
    Optional<ScrewThread> thread = trade.threads().find(kind.thread());
    Optional<Change> change =
        thread.flatMap(known -> Change.of(exam.known().orElseThrow(), known, kind));
    if (change.isEmpty()
        || !samePart(exam.joint().fastener(), kind)
        || fails(exam, thread.get(), kind)) {
      return Optional.empty();
    }
    Optional<SeatAnswer> after =
        seated.computeIfAbsent(
            List.of(kind.thread(), kind.style()), each -> after(exam, thread.get(), kind));
    if (exam.seat().isPresent() && (after.isEmpty() || worse(exam, after.get()))) {
      return Optional.empty();
    }
    int present = boxes.stream().mapToInt(Box::free).sum();
    String places = String.join(", ", boxes.stream().map(Box::place).distinct().toList());
    Substitute substitute = new Substitute(kind, change.get().words(), present, places, after);
    boolean better =
        present >= exam.joint().count() && change.get().easy() && improves(exam, after);
    return Optional.of(new Ranked(substitute, change.get(), better));
  }

  /** Returns whether both are heads, both nuts, both washers or both studs. */
  private boolean samePart(Fastener kits, Fastener other) {
    return part(kits.style()).equals(part(other.style()));
  }

  private String part(String style) {
    return trade.heads().styles().stream()
        .filter(each -> each.id().equals(style))
        .map(HeadStyle::part)
        .map(Enum::name)
        .findFirst()
        .orElse(style);
  }

  /** Returns whether its length would be as bad as the kit's own fault, or a worry of its own. */
  private boolean fails(Exam exam, ScrewThread thread, Fastener kind) {
    Finding.Weight allowed =
        kind.length().equals(exam.joint().fastener().length())
            ? Finding.Weight.CAUTION
            : Finding.Weight.NOTE;
    return lengths.look(exam.joint(), thread, kind).stream()
        .anyMatch(finding -> finding.weight().compareTo(allowed) > 0);
  }

  private Optional<SeatAnswer> after(Exam exam, ScrewThread thread, Fastener kind) {
    Optional<Head> head =
        kind.style().equals(Trade.STUD)
            ? trade.heads().find("hexagon-nut", thread)
            : trade.head(kind, thread);
    return exam.seat()
        .flatMap(
            before ->
                head.map(
                    each -> {
                      SeatQuestion asked = before.question();
                      return trade
                          .seats()
                          .check(
                              new SeatQuestion(
                                  asked.seat(),
                                  Expected.seated(each, OptionalDouble.empty()),
                                  asked.holeDiameterMm(),
                                  asked.expectedErrorMm(),
                                  asked.errorMeans()));
                    }));
  }

  private static boolean worse(Exam exam, SeatAnswer after) {
    Verdict before = exam.seat().orElseThrow().verdict();
    return after.verdict() == Verdict.FOULS || after.verdict().compareTo(before) > 0;
  }

  private static boolean improves(Exam exam, Optional<SeatAnswer> after) {
    boolean sitsBetter =
        after.isPresent()
            && after.get().verdict().compareTo(exam.seat().orElseThrow().verdict()) < 0;
    return sitsBetter || exam.fastenerFails() && lengthFails(exam);
  }

  private static boolean lengthFails(Exam exam) {
    return exam.findings().stream()
        .anyMatch(
            finding ->
                finding.weight() == Finding.Weight.FAULT && finding.rule().equals(LengthRule.NAME));
  }

  /** Returns heads for the seat's cures: those that stock holds first, the least change first. */
  List<SeatedHead> otherHeads(Exam exam, FastenerPool pool) {
    Joint joint = exam.joint();
    ScrewThread thread = exam.known().orElseThrow().thread();
    String part = part(joint.fastener().style());
    List<String> held =
        pool.freeStock().stream()
            .map(Box::fastener)
            .filter(each -> each.thread().equals(thread.designation()))
            .map(Fastener::style)
            .distinct()
            .toList();
    return trade.heads().forThread(thread).stream()
        .filter(head -> !head.style().equals(joint.fastener().style()))
        .filter(head -> part(head.style()).equals(part))
        // A countersunk head bears on a cone, not on the seat.
        .filter(head -> head.countersunkDegrees().isEmpty())
        .sorted(
            Comparator.comparing((Head head) -> !held.contains(head.style()))
                .thenComparing(head -> !head.style().startsWith("small-"))
                .thenComparing(Head::acrossCorners, Comparator.reverseOrder())
                .thenComparing(Head::style))
        .map(head -> Expected.seated(head, OptionalDouble.empty()))
        .toList();
  }
}
