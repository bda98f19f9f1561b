package org.fettlebench.command.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fettlebench.command.Command;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;

/** Answers words that are no whole command: lists what there is, or suggests what was meant. */
final class Guide {
  private static final int MOST_SUGGESTIONS = 3;

  private final List<Usage> usages;

  Guide(List<Command> commands) {
    this.usages = commands.stream().map(Command::usage).toList();
  }

  /** Prints a list or complains, and returns the exit status. */
  int answer(Asked asked, Printer printer) {
    List<String> words = asked.words();
    if (words.isEmpty()) {
      refuseOptionsAlone(asked);
      return printer.print(all());
    }
    List<Usage> group = usages.stream().filter(u -> u.group().equals(words.get(0))).toList();
    if (!group.isEmpty() && words.size() == 1) {
      if (asked.help()) {
        return printer.print(group(group));
      }
      throw new CommandException(
          Messages.wordMissing(words.get(0), group.stream().map(Usage::words).toList()));
    }
    throw new CommandException(Messages.noSuchCommand(String.join(" ", words), nearest(words)));
  }

  private static void refuseOptionsAlone(Asked asked) {
    if (!asked.rest().isEmpty()) {
      throw new CommandException(Messages.optionAlone(asked.rest().get(0)));
    }
  }

  private Reply all() {
    Map<String, List<Usage>> groups =
        usages.stream()
            .collect(Collectors.groupingBy(Usage::group, TreeMap::new, Collectors.toList()));
    StringBuilder text = new StringBuilder(Messages.HEAD).append("\n");
    groups.forEach(
        (name, group) -> text.append('\n').append(name).append('\n').append(rows(group)));
    return Reply.done(text.append('\n').append(Messages.FOOT).toString(), data(usages));
  }

  private static Reply group(List<Usage> group) {
    String text = rows(group) + "\n" + Messages.GROUP_FOOT;
    return Reply.done(text, data(group));
  }

  private static String rows(List<Usage> group) {
    Columns columns = new Columns().indent(2);
    group.forEach(usage -> columns.row(usage.words(), usage.purpose()));
    return columns.text() + "\n";
  }

  private static Object data(List<Usage> usages) {
    return Data.of("commands", usages.stream().map(HelpText::data).toList());
  }

  /** Returns commands whose words are nearly those typed, else those of the same group. */
  private List<String> nearest(List<String> typed) {
    record Near(String words, int distance) {}
    List<Near> near = new ArrayList<>();
    for (Usage usage : usages) {
      int count = usage.words().split(" ").length;
      String same = typed.stream().limit(count).collect(Collectors.joining(" "));
      int distance = Nearness.distance(same, usage.words());
      if (distance <= Math.max(2, usage.words().length() / 3)) {
        near.add(new Near(usage.words(), distance));
      }
    }
    near.sort(Comparator.comparingInt(Near::distance).thenComparing(Near::words));
    if (near.isEmpty()) {
      return usages.stream()
          .filter(usage -> usage.group().equals(typed.get(0)))
          .map(Usage::words)
          .toList();
    }
    // What is much farther than the nearest was hardly meant.
    int farthest = near.get(0).distance() + 1;
    return near.stream()
        .takeWhile(one -> one.distance() <= farthest)
        .limit(MOST_SUGGESTIONS)
        .map(Near::words)
        .toList();
  }
}
