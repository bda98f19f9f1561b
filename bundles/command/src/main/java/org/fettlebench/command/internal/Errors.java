package org.fettlebench.command.internal;

import java.util.List;
import java.util.Map;
import org.fettlebench.club.ClubException;
import org.fettlebench.command.CommandException;
import org.fettlebench.fits.SeatException;
import org.fettlebench.holes.correct.HoleException;
import org.fettlebench.kits.FaultyFileException;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.store.StoreException;
import org.fettlebench.tables.TableFormatException;

/**
 * What is told when a call fails.
 *
 * @param message all of it in words
 * @param faults those of a file, one by one; empty for other errors
 */
record Errors(String message, List<FaultyFileException.Fault> faults) {
  /** Returns whether an exception's message was written for the person at the keyboard. */
  static boolean isForPeople(Throwable e) {
    return e instanceof CommandException
        || e instanceof FaultyFileException
        || e instanceof MeasureException
        || e instanceof ClubException
        || e instanceof SeatException
        || e instanceof HoleException
        || e instanceof StoreException
        || e instanceof TableFormatException;
  }

  static Errors of(RuntimeException e) {
    return e instanceof FaultyFileException faulty
        ? new Errors(Messages.faults(faulty.faults().size()), faulty.faults())
        : new Errors(String.valueOf(e.getMessage()), List.of());
  }

  String text() {
    StringBuilder text = new StringBuilder(message);
    faults.forEach(fault -> text.append('\n').append(fault));
    return text.toString();
  }

  Map<String, Object> data() {
    return Data.of(
        "error", Data.of("message", message, "faults", faults.stream().map(Errors::data).toList()));
  }

  private static Map<String, Object> data(FaultyFileException.Fault fault) {
    return Data.of(
        "file", fault.file(),
        "line", fault.line(),
        "column", fault.column(),
        "value", fault.value(),
        "wrong", fault.wrong(),
        "remedy", fault.remedy());
  }
}
