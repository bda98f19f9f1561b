package org.fettlebench.tooling.internal.speed;

import java.util.List;
import java.util.stream.Stream;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Table;
import org.fettlebench.tooling.internal.RowFaults;
import org.fettlebench.tooling.speed.CuttingOperation;

/** Parts of the speed for drilling, by a table of kind speed-factors. */
record FactorTable(List<Factor> factors) {
  static final String KIND = "speed-factors";
  static final String CARBON = "carbon steel";
  private static final double LARGEST = 2;

  /**
   * A part of the drilling speed.
   *
   * @param what an operation's word, or carbon steel
   */
  record Factor(String what, double least, double most, Source source) {}

  /**
   * Reads a table.
   *
   * @throws org.fettlebench.tables.TableFormatException with every fault of the table
   */
  static FactorTable read(Table table) {
    return new FactorTable(RowFaults.read(table, FactorTable::factor));
  }

  private static Factor factor(Table.Row row) {
    String what = row.requiredText("operation");
    if (!what.equals(CARBON) && CuttingOperation.ofWord(what).isEmpty()) {
      throw RowFaults.fault(row, "operation '" + what + "' is none, and not '" + CARBON + "'");
    }
    double least = RowFaults.within(row, "least", 0, LARGEST);
    double most = RowFaults.within(row, "most", 0, LARGEST);
    if (!(least <= most)) {
      throw RowFaults.fault(row, "least " + least + " is above most " + most);
    }
    return new Factor(what, least, most, row.source());
  }

  static List<Factor> of(String what, List<FactorTable> tables) {
    return tables.stream()
        .flatMap(table -> table.factors().stream())
        .filter(factor -> factor.what().equals(what))
        .toList();
  }

  static double least(List<Factor> factors) {
    return factors.stream().mapToDouble(Factor::least).min().orElse(1);
  }

  static double most(List<Factor> factors) {
    return factors.stream().mapToDouble(Factor::most).max().orElse(1);
  }

  static Stream<String> words(List<Factor> factors) {
    return factors.stream()
        .map(
            factor ->
                "%s: %s of the speed for drilling (%s; %s)"
                    .formatted(
                        factor.what(),
                        factor.least() == factor.most()
                            ? plain(factor.least())
                            : plain(factor.least()) + " to " + plain(factor.most()),
                        factor.source().citation(),
                        factor.source().standing().words()));
  }

  private static String plain(double part) {
    return part == Math.rint(part) ? String.valueOf((long) part) : String.valueOf(part);
  }
}
