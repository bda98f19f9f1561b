package org.fettlebench.threads.internal.strength;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.threads.strength.Material;

/** Reads a table of kind {@code materials}; finds all its faults at once. */
final class MaterialReader {
  static final String KIND = "materials";

  /** 1000 lbf (4448.2216152605 N) on a square inch (645.16 mm2), exactly. */
  private static final double MPA_PER_KSI = 4448.2216152605 / 645.16;

  private MaterialReader() {}

  static List<Material> read(Table table) {
    List<Material> materials = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (Table.Row row : table.rows()) {
      try {
        materials.add(material(row));
      } catch (TableFormatException refused) {
        faults.add(refused.getMessage());
      } catch (MeasureException refused) {
        faults.add("line " + row.line() + ": " + refused.getMessage());
      }
    }
    if (!faults.isEmpty()) {
      throw new TableFormatException(KIND + " " + table.id(), faults);
    }
    return materials;
  }

  private static Material material(Table.Row row) {
    return new Material(
        row.requiredText("id"),
        row.requiredText("name"),
        mpa(row, "tensile")
            .orElseThrow(
                () ->
                    new TableFormatException(
                        "line " + row.line(),
                        List.of("a figure is missing under tensile_mpa or tensile_ksi"))),
        mpa(row, "yield"),
        mpa(row, "proof"),
        mpa(row, "shear"),
        row.source());
  }

  private static Optional<Double> mpa(Table.Row row, String what) {
    return row.number(what + "_mpa")
        .map(BigDecimal::doubleValue)
        .or(() -> row.number(what + "_ksi").map(ksi -> ksi.doubleValue() * MPA_PER_KSI));
  }
}
