package org.fettlebench.command;

import java.util.Objects;

/**
 * The answer of a command.
 *
 * @param status exit status
 * @param text for people, without a last line end
 * @param data for machines: maps with text keys (in order), lists, texts, finite numbers, truth
 *     values; numbers carry their unit in the key, such as {@code pitchMm}
 */
public record Reply(Status status, String text, Object data) {
  /** Refuses what is missing. */
  public Reply {
    Objects.requireNonNull(status, "status");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(data, "data");
  }

  /** Returns the answer of a command that is done, everything being well. */
  public static Reply done(String text, Object data) {
    return new Reply(Status.DONE, text, data);
  }

  /** Returns the answer of a command that is done and found that something fails or is short. */
  public static Reply wanting(String text, Object data) {
    return new Reply(Status.WANTING, text, data);
  }

  /** Returns {@link #wanting} or {@link #done}, as told. */
  public static Reply of(boolean wanting, String text, Object data) {
    return wanting ? wanting(text, data) : done(text, data);
  }

  /** Exit statuses. */
  public enum Status {
    /** Done. */
    DONE(0),
    /** Done, and something does not fit or is short. */
    WANTING(1);

    private final int code;

    Status(int code) {
      this.code = code;
    }

    /** Returns the exit status of the process. */
    public int code() {
      return code;
    }
  }
}
