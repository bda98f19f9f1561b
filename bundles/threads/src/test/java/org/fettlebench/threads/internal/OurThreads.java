package org.fettlebench.threads.internal;

import java.util.Arrays;
import org.fettlebench.tables.FixedTables;

/** The shipped series, without a framework. */
public final class OurThreads {
  public static final FixedTables TABLES =
      FixedTables.fromResources(
          OurThreads.class,
          Arrays.stream(
                  new String[] {
                    "ba",
                    "me",
                    "bsb",
                    "bsw",
                    "bsf",
                    "metric-coarse",
                    "metric-fine",
                    "unc",
                    "unf",
                    "unef",
                    "g",
                    "limits-iso-965",
                    "limits-iso-228",
                    "tolerances-iso-965",
                    "deviations-iso-965",
                    "printed-asme-b1-1",
                    "materials"
                  })
              .map(name -> "/FETTLEBENCH/tables/" + name + ".csv")
              .toArray(String[]::new));

  public static final ThreadRegistry THREADS =
      new ThreadRegistry(
          TABLES,
          (table, fault) -> {
            throw new AssertionError(table.id(), fault);
          });

  private OurThreads() {}
}
