package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.desktop.seats.internal.Practice.Entry;
import org.fettlebench.desktop.seats.internal.Practice.Margins;
import org.fettlebench.desktop.seats.internal.Practice.Over;
import org.fettlebench.desktop.seats.internal.Practice.Readings;
import org.fettlebench.holes.otherface.Turn;

/** The part of a draft that tells how a person works at the hole. */
final class DraftPractice {
  private DraftPractice() {}

  /** Returns the lines, each by its parts. */
  static List<Object[]> lines(Practice practice) {
    List<Object[]> lines = new ArrayList<>();
    Readings readings = practice.readings();
    lines.add(
        new Object[] {
          "readings", readings.way(), Draft.figure(readings.pin()), Draft.figure(readings.doubt())
        });
    for (int i = 0; i < readings.entries().size(); i++) {
      Entry entry = readings.entries().get(i);
      lines.add(new Object[] {"read", i, entry.from(), Draft.figure(entry.read())});
    }
    Margins margins = practice.margins();
    lines.add(
        new Object[] {"margins", margins.cleanUpMm(), margins.filingMm(), margins.bushWallMm()});
    Over over = practice.over();
    lines.add(new Object[] {"over", Draft.figure(over.depthMm()), over.turn().name(), over.lead()});
    return lines;
  }

  /** Returns the practice with what a line says; unchanged by a line of something else. */
  static Practice read(Practice practice, String[] part) {
    Readings readings = practice.readings();
    return switch (part[0]) {
      case "readings" ->
          practice.with(
              new Readings(
                  Math.floorMod(Integer.parseInt(part[1]), Recipes.WAYS.size()),
                  Draft.length(part[2]),
                  Draft.length(part[3]),
                  readings.entries()));
      case "read" ->
          practice.with(
              readings.also(new Entry(part[2], Draft.length(part[3])), part[1].equals("0")));
      case "margins" ->
          practice.with(
              new Margins(Draft.number(part[1]), Draft.number(part[2]), Draft.number(part[3])));
      case "over" ->
          practice.with(
              new Over(Draft.maybe(part[1]), Turn.valueOf(part[2]), Draft.number(part[3])));
      default -> practice;
    };
  }
}
