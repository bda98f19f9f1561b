package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.Verdict;
import org.fettlebench.kits.Fastener;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Holdings;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.JointReport.Fetch;
import org.fettlebench.kits.JointReport.Supply;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.KitReport;
import org.fettlebench.kits.internal.FastenerPool.Taken;
import org.fettlebench.kits.internal.Substitutes.Ranked;
import org.fettlebench.modules.Faults;

/**
 * Shares the fasteners out among the joints: first each joint's own in file order, then better ones
 * for those that need them, then what that set free for those that are short.
 */
final class Sharing {
  private final Trade trade;
  private final Faults faults;
  private final Kit kit;
  private final List<Exam> exams;
  private final FastenerPool pool;
  private final Substitutes substitutes;
  private final Map<Exam, List<Taken>> own = new IdentityHashMap<>();
  private final Map<Exam, List<Taken>> better = new IdentityHashMap<>();
  private final Map<Exam, List<Ranked>> ranked = new IdentityHashMap<>();

  Sharing(Trade trade, Kit kit, Holdings holdings, List<Exam> exams, Faults faults) {
    this.faults = faults;
    this.trade = trade;
    this.kit = kit;
    this.exams = exams;
    this.pool = new FastenerPool(trade, kit, holdings.lines());
    this.substitutes = new Substitutes(trade);
  }

  KitReport report() {
    exams.forEach(exam -> own.put(exam, take(exam, exam.joint().count())));
    exams.forEach(this::takeBetter);
    exams.stream().filter(exam -> !better.containsKey(exam)).forEach(this::fillUp);
    List<JointReport> joints = exams.stream().map(this::report).toList();
    return new KitReport(kit, joints, new Shortages(joints).list(), Cautions.of(kit));
  }

  private List<Taken> take(Exam exam, int count) {
    return new ArrayList<>(pool.take(exam.joint().fastener(), count));
  }

  private void takeBetter(Exam exam) {
    List<Ranked> found =
        content(exam)
            ? List.of()
            : orNone(exam, "seeking substitutes for joint ", () -> substitutes.of(exam, pool));
    ranked.put(exam, found);
    Optional<Ranked> best = found.stream().filter(Ranked::better).findFirst();
    best.ifPresent(
        each -> {
          better.put(exam, pool.take(each.substitute().fastener(), exam.joint().count()));
          pool.release(own.put(exam, List.of()));
        });
  }

  /**
   * Returns whether the kit's own fasteners are all there and sit well, so that no other is sought.
   */
  private boolean content(Exam exam) {
    boolean sits = exam.seat().map(answer -> answer.verdict() == Verdict.CLEARS).orElse(true);
    return sits
        && !exam.fastenerFails()
        && FastenerPool.count(own.get(exam)) == exam.joint().count();
  }

  private void fillUp(Exam exam) {
    List<Taken> taken = own.get(exam);
    taken.addAll(take(exam, exam.joint().count() - FastenerPool.count(taken)));
  }

  private JointReport report(Exam exam) {
    Joint joint = exam.joint();
    Optional<SeatAnswer> seat = exam.seat();
    Supply supply = supply(exam);
    List<Fetch> fetch = new ArrayList<>(fasteners(exam));
    fetch.addAll(exam.tools());
    List<Finding> findings = new ArrayList<>(exam.findings());
    findings.addAll(bag(joint));
    findings.sort(Comparator.comparing(Finding::weight).reversed());
    return new JointReport(
        joint,
        seat.map(SeatAnswer::verdict),
        supply,
        seat,
        findings,
        cures(exam),
        ranked.get(exam).stream().map(Ranked::substitute).toList(),
        fetch);
  }

  private Supply supply(Exam exam) {
    if (better.containsKey(exam)) {
      return Supply.BETTER_FROM_STOCK;
    }
    int there = FastenerPool.count(own.get(exam));
    if (there > 0 && exam.fastenerFails()) {
      return Supply.WRONG;
    }
    return there < exam.joint().count() ? Supply.SHORT : Supply.COMPLETE;
  }

  private List<SeatCure> cures(Exam exam) {
    Optional<SeatAnswer> seat = exam.seat().filter(answer -> answer.verdict() != Verdict.CLEARS);
    return seat.map(answer -> orNone(exam, "seeking cures for joint ", () -> cures(exam, answer)))
        .orElse(List.of());
  }

  private List<SeatCure> cures(Exam exam, SeatAnswer answer) {
    return trade
        .seats()
        .cures(
            answer,
            substitutes.otherHeads(exam, pool),
            trade.methods().methods(),
            kit.confidence());
  }

  /** What cannot be worked out for one joint is reported and left out; the check goes on. */
  private <T> List<T> orNone(Exam exam, String doing, Supplier<List<T>> work) {
    try {
      return work.get();
    } catch (RuntimeException refused) {
      faults.report(this, doing + exam.joint().name(), refused);
      return List.of();
    }
  }

  private List<Fetch> fasteners(Exam exam) {
    List<Taken> taken = better.getOrDefault(exam, own.get(exam));
    Map<String, Fetch> fetch = new LinkedHashMap<>();
    for (Taken some : taken) {
      Fetch.State state = some.box().isBag() ? Fetch.State.IN_BAG : Fetch.State.IN;
      String key = some.box().place() + "|" + some.box().fastener();
      int quantity = some.quantity();
      fetch.put(
          key,
          new Fetch(
              Fetch.Role.FASTENER,
              some.box().fastener().title(),
              state,
              some.box().place(),
              quantity + " off",
              quantity));
    }
    List<Fetch> all = new ArrayList<>(fetch.values());
    int missing = exam.joint().count() - FastenerPool.count(taken);
    if (missing > 0) {
      Fastener wanted = exam.joint().fastener();
      Shortages.Lack lack = Shortages.lack(pool.notToBeHad(wanted));
      all.add(
          new Fetch(
              Fetch.Role.FASTENER,
              wanted.title(),
              lack.state(),
              lack.why(),
              missing + " off missing",
              missing));
    }
    return all;
  }

  /** Says when the bag holds fewer than the kit's list promises. */
  private List<Finding> bag(Joint joint) {
    List<Finding> findings = new ArrayList<>();
    for (Kit.BagLine line : kit.bag()) {
      if (pool.same(line.fastener(), joint.fastener())
          && line.counted().filter(counted -> counted < line.listed()).isPresent()) {
        findings.add(
            Finding.of(
                Finding.Weight.CAUTION,
                "bag",
                "The kit's list promises "
                    + line.listed()
                    + ", "
                    + line.there()
                    + " were counted in the bag.",
                new Finding.Figure("listedCount", line.listed()),
                new Finding.Figure("countedCount", line.there())));
      }
    }
    return findings;
  }
}
