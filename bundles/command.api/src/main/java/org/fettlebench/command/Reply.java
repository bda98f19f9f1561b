package org.fettlebench.command;

/**
 * The answer of a command.
 *
 * @param status exit status
 * @param text for people, without a last line end
 * @param data for machines: maps with text keys (in order), lists, texts, numbers, truth values;
 *     numbers carry their unit in the key
 */
public record Reply(Status status, String text, Object data) {
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
