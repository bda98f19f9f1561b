package org.fettlebench.command.internal.method;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fettlebench.club.HoleError;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.command.Call;
import org.fettlebench.command.CommandException;
import org.fettlebench.command.Usage;
import org.fettlebench.holes.chance.MethodEstimates;
import org.fettlebench.kits.ClubMethods;

/** The options that say whose holes are meant, and how much what was known before counts. */
final class Asking {
  private static final double MOST_PRIOR_HOLES = 1000;

  private Asking() {}

  static Usage options(Usage usage) {
    return usage
        .option("--member", "NAME", "only the holes that this member drilled")
        .option("--machine", "NAME", "only the holes drilled on this machine")
        .option(
            "--prior", "N", "how many holes the figures known before count for; 10 if not said");
  }

  static ClubMethods.Asked of(Call call, List<MeasuredError> book) {
    return new ClubMethods.Asked(
        known(call, "--member", "member", book, HoleError::member),
        known(call, "--machine", "machine", book, HoleError::machine),
        call.number("--prior", 0, MOST_PRIOR_HOLES).orElse(MethodEstimates.USUAL_PRIOR_HOLES));
  }

  /** A name that stands in no entry is a slip of the keys rather than somebody without holes. */
  private static Optional<String> known(
      Call call,
      String option,
      String what,
      List<MeasuredError> book,
      Function<HoleError, String> name) {
    Optional<String> asked = call.option(option).map(String::strip);
    List<String> names =
        book.stream()
            .filter(MeasuredError::counts)
            .map(MeasuredError::error)
            .map(name)
            .filter(each -> !each.isEmpty())
            .distinct()
            .sorted()
            .toList();
    if (asked.isPresent() && !names.contains(asked.get())) {
      throw new CommandException(
          "no error was measured of the "
              + what
              + " \""
              + asked.get()
              + "\"; "
              + (names.isEmpty()
                  ? "none is named in the book yet, \"method measure\" writes errors down"
                  : "the book has " + String.join(", ", names)));
    }
    return asked;
  }
}
