package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fettlebench.club.StockLine;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.JointReport.Fetch;
import org.fettlebench.kits.JointReport.Fetch.Role;
import org.fettlebench.kits.JointReport.Fetch.State;
import org.fettlebench.kits.KitReport.Shortage;

/** What is missing over the whole kit, each kind of thing once. */
final class Shortages {
  /**
   * Why a thing is missing.
   *
   * @param state out, worn or not held
   * @param why in words
   */
  record Lack(State state, String why) {}

  private final List<JointReport> joints;

  Shortages(List<JointReport> joints) {
    this.joints = joints;
  }

  List<Shortage> list() {
    Map<String, List<JointReport>> needing = new LinkedHashMap<>();
    Map<String, Fetch> first = new LinkedHashMap<>();
    for (Role role : Role.values()) {
      for (JointReport joint : joints) {
        for (Fetch fetch : joint.fetch()) {
          if (fetch.role() == role && !fetch.atHand()) {
            String key = role == Role.FASTENER ? role + fetch.what() : fetch.what();
            first.putIfAbsent(key, fetch);
            needing.computeIfAbsent(key, each -> new ArrayList<>()).add(joint);
          }
        }
      }
    }
    List<Shortage> shortages = new ArrayList<>();
    first.forEach((key, fetch) -> shortages.add(shortage(fetch, needing.get(key))));
    return shortages;
  }

  private Shortage shortage(Fetch fetch, List<JointReport> needing) {
    List<String> names = needing.stream().map(joint -> joint.joint().name()).distinct().toList();
    String why = fetch.state().words() + (fetch.from().isBlank() ? "" : ", " + fetch.from());
    if (fetch.role() != Role.FASTENER) {
      return new Shortage(fetch.what(), fetch.role(), 1, 0, why, names);
    }
    int needed = 0;
    int present = 0;
    for (JointReport joint : joints) {
      if (joint.supply() != JointReport.Supply.BETTER_FROM_STOCK
          && joint.joint().fastener().title().equals(fetch.what())) {
        needed += joint.joint().count();
        present += joint.joint().count() - missingOf(joint);
      }
    }
    return new Shortage(fetch.what(), fetch.role(), needed, present, why, names);
  }

  private static int missingOf(JointReport joint) {
    return joint.fetch().stream()
        .filter(fetch -> fetch.role() == Role.FASTENER && !fetch.atHand())
        .mapToInt(Fetch::count)
        .sum();
  }

  /** Returns why fasteners are missing, from the stock lines that would do if they could be had. */
  static Lack lack(List<StockLine> notToBeHad) {
    for (StockLine line : notToBeHad) {
      if (line.lent() > 0 && line.condition() == StockLine.Condition.GOOD) {
        return new Lack(
            State.OUT,
            line.lent() + " with " + (line.holder().isBlank() ? "a member" : line.holder()));
      }
    }
    return notToBeHad.stream()
        .filter(line -> Held.state(line) == State.WORN)
        .findFirst()
        .map(line -> new Lack(State.WORN, line.quantity() + " worn in " + line.place()))
        .orElse(new Lack(State.NOT_HELD, "to buy or make"));
  }
}
