package org.fettlebench.command.internal.thread;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Reply;
import org.fettlebench.command.internal.Data;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.Threads;

/** Reads threads out of typed words: a designation may be several words, and several may follow. */
public final class ThreadWords {
  private static final int MOST_NEAR = 5;

  private ThreadWords() {}

  /**
   * Reads one thread out of all words where a hand or a length would say nothing.
   *
   * @throws CommandException naming the nearest threads when there is no such thread, or the thread
   *     alone when more is said
   */
  public static ScrewThread one(Threads threads, String typed) {
    ThreadCall called = called(threads, typed);
    if (!around(called).isEmpty()) {
      throw new CommandException(
          "\"%s\" says more than which thread; here it is %s alone"
              .formatted(typed, called.thread().designation()));
    }
    return called.thread();
  }

  /**
   * Reads one thread with its class out of all words.
   *
   * @throws CommandException naming the nearest threads when there is no such thread
   */
  public static ThreadCall called(Threads threads, String typed) {
    return threads.read(typed).orElseThrow(() -> unknown(threads, typed));
  }

  /**
   * Reads one or more threads; at each place the longest run of words that names a thread counts.
   *
   * @throws CommandException naming the nearest threads when some words name none
   */
  public static List<ThreadCall> several(Threads threads, List<String> typed) {
    List<ThreadCall> found = new ArrayList<>();
    List<String> words = typed.stream().flatMap(word -> parts(threads, word)).toList();
    int next = 0;
    while (next < words.size()) {
      Run run = longest(threads, words, next).orElse(null);
      if (run == null) {
        throw unknown(threads, String.join(" ", unread(threads, words, next)));
      }
      found.add(run.thread());
      next = run.end();
    }
    return found;
  }

  private static java.util.stream.Stream<String> parts(Threads threads, String word) {
    // "2 BA" in quotes is one designation; a comma parts two, unless it is a decimal comma: M3,5.
    if (threads.read(word).isPresent()) {
      return java.util.stream.Stream.of(word);
    }
    return java.util.Arrays.stream(word.split(",")).map(String::strip).filter(w -> !w.isEmpty());
  }

  private record Run(ThreadCall thread, int end) {}

  private static Optional<Run> longest(Threads threads, List<String> words, int from) {
    for (int end = words.size(); end > from; end--) {
      Optional<ThreadCall> thread = threads.read(String.join(" ", words.subList(from, end)));
      if (thread.isPresent()) {
        return Optional.of(new Run(thread.get(), end));
      }
    }
    return Optional.empty();
  }

  /** Returns the words up to the next that begins a thread. */
  private static List<String> unread(Threads threads, List<String> words, int from) {
    int end = from + 1;
    while (end < words.size() && longest(threads, words, end).isEmpty()) {
      end++;
    }
    return words.subList(from, end);
  }

  /** Returns what was written around the thread and does not change its figures. */
  static List<String> around(ThreadCall called) {
    List<String> around = new ArrayList<>();
    if (called.leftHand()) {
      around.add("left-hand; the figures are those of the right-hand thread");
    }
    called.length().ifPresent(length -> around.add("a length of " + length + " stands behind it"));
    return around;
  }

  /** Returns an answer with what was written around its thread told in words and as data. */
  public static Reply told(ThreadCall called, Reply reply) {
    List<String> around = around(called);
    if (around.isEmpty()) {
      return reply;
    }
    Map<Object, Object> data = new LinkedHashMap<>((Map<?, ?>) reply.data());
    data.putAll(data(called));
    return new Reply(reply.status(), reply.text() + "\n" + notes(around), data);
  }

  /** Returns the lines of what was written around a thread. */
  static String notes(List<String> around) {
    return around.stream().map(note -> "  note: " + note).collect(Collectors.joining("\n"));
  }

  /** Returns what was written around a thread as data. */
  static Map<String, Object> data(ThreadCall called) {
    return Data.of(
        "leftHand", called.leftHand(),
        "lengthMm", called.length().map(Data::mm),
        "lengthIn", called.length().map(Data::in));
  }

  /** Returns what is told of words that name no thread, with the nearest threads. */
  public static CommandException unknown(Threads threads, String typed) {
    Optional<String> other = threads.refusal(typed);
    if (other.isPresent()) {
      return new CommandException("\"" + typed + "\": " + other.get());
    }
    String near =
        threads.near(typed, MOST_NEAR).stream()
            .map(ScrewThread::designation)
            .collect(Collectors.joining(", "));
    return none(typed, near.isEmpty() ? "\"thread list\" shows the series" : "near it are " + near);
  }

  /** Returns the same where the nearest threads, which take long to find, are not looked for. */
  static CommandException unknownOfMany(Threads threads, String typed) {
    return threads
        .refusal(typed)
        .map(other -> new CommandException("\"" + typed + "\": " + other))
        .orElseGet(() -> none(typed, "ask \"thread show\" for it alone to see what is near it"));
  }

  private static CommandException none(String typed, String remedy) {
    return new CommandException("no thread series has \"" + typed + "\"; " + remedy);
  }
}
