package org.fettlebench.tooling.work;

import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Source;

/**
 * A material as the bench knows it when it is drilled or tapped: coarser than a specification,
 * since the tables for cutting tell brass from steel and not one brass from another.
 *
 * @param id short name, such as {@code mild-steel}
 * @param name for people, such as {@code mild steel}
 * @param source by which other names, such as {@code EN1A} or {@code CZ121}, are taken for it
 */
public record WorkMaterial(String id, String name, Source source) {
  /**
   * Checks the names.
   *
   * @throws MeasureException if a name is blank
   */
  public WorkMaterial {
    if (id.isBlank() || name.isBlank()) {
      throw new MeasureException("a material to be worked needs an id and a name");
    }
  }
}
