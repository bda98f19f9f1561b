package org.fettlebench.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.fettlebench.command.Reply;
import org.fettlebench.command.internal.thread.ThreadBatch;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.threads.internal.strength.StrengthService;
import org.fettlebench.threads.internal.wires.WireService;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * A list of threads worked out by {@code thread batch}, from text to text: one call is {@link
 * #ROWS} rows. The list is made as it is read, and the answer is thrown away.
 */
@State(Scope.Benchmark)
public class BatchBenchmark {
  /** Rows of one call. */
  public static final int ROWS = 10_000;

  private static final List<String> DESIGNATIONS =
      List.of(
          "2 BA",
          "4BA",
          "0 B.A.",
          "10 BA",
          "M6",
          "M3x0.5",
          "M10 x 1.25",
          "M2.5",
          "1/4-20 UNC",
          "#10-32 UNF-2B/2A",
          "1/2-13 UNC",
          "1/4-32 UNEF",
          "1/4 BSW",
          "1/8 BSW",
          "5/16 BSF",
          "1/4 x 40 ME",
          "3/8 x 32 ME",
          "5/16 BSB",
          "G1/8",
          "G 1/2",
          "M6-6H/6g",
          "M8x1-6g",
          "3/4-16 UNF");

  /** What is asked of each thread. */
  @Param({"limits", "limits,stress,tapping"})
  String figures;

  private ThreadBatch batch;

  /** Reads the shipped tables. */
  @Setup
  public void read() {
    Tables tables = Shipped.tables();
    ThreadRegistry threads = Shipped.threads(tables);
    batch =
        new ThreadBatch(
            threads,
            threads,
            new StrengthService(threads),
            new WireService(),
            Shipped.materials(tables),
            Shipped.drills(tables),
            Shipped.holes(tables));
  }

  /** Works out {@link #ROWS} rows. */
  @Benchmark
  public Reply rows() {
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
    Reply reply = batch.run(new BatchCall(figures, new Rows(ROWS), nowhere));
    if (nowhere.checkError() || reply.status() != Reply.Status.DONE) {
      throw new IllegalStateException(reply.toString());
    }
    return reply;
  }

  /** The list, made as it is read. */
  private static final class Rows extends InputStream {
    private final int rows;
    private int made;
    private byte[] line = "designation\n".getBytes(StandardCharsets.UTF_8);
    private int at;

    Rows(int rows) {
      this.rows = rows;
    }

    private boolean more() {
      if (at < line.length) {
        return true;
      }
      if (made >= rows) {
        return false;
      }
      line = (DESIGNATIONS.get(made % DESIGNATIONS.size()) + "\n").getBytes(StandardCharsets.UTF_8);
      made++;
      at = 0;
      return true;
    }

    @Override
    public int read() {
      return more() ? line[at++] : -1;
    }

    @Override
    public int read(byte[] into, int from, int most) throws IOException {
      int count = 0;
      while (count < most && more()) {
        int part = Math.min(most - count, line.length - at);
        System.arraycopy(line, at, into, from + count, part);
        at += part;
        count += part;
      }
      return count == 0 && most > 0 ? -1 : count;
    }
  }
}
