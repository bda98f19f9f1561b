package org.fettlebench.tables;

import java.math.BigDecimal;
import java.util.List;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;

/** Gives cells their meaning and says, for the one who wrote the file, what is wrong with them. */
final class Cell {
  private Cell() {}

  static Length length(int line, String column, String cell) {
    LengthUnit unit = unit(column);
    if (cell.chars().anyMatch(sign -> Character.isLetter(sign) || sign == '"' || sign == '\'')) {
      throw fault(line, column, "'" + cell + "' must be a figure alone: the column gives the unit");
    }
    if (unit == LengthUnit.MILLIMETRE && cell.indexOf('/') >= 0) {
      throw fault(line, column, "'" + cell + "' is a fraction: write millimetres as a decimal");
    }
    try {
      return LengthReader.read(cell, unit);
    } catch (MeasureException refused) {
      throw fault(line, column, refused.getMessage());
    }
  }

  static BigDecimal number(int line, String column, String cell) {
    if (!cell.matches("[+-]?(\\d{1,18}(\\.\\d{0,18})?|\\.\\d{1,18})")) {
      throw fault(line, column, "'" + cell + "' is no number: write one such as 0.5");
    }
    return new BigDecimal(cell);
  }

  static TableFormatException missing(int line, String column) {
    return fault(line, column, "the cell is blank or there is no such column: give it a value");
  }

  private static LengthUnit unit(String column) {
    if (column.endsWith("_mm")) {
      return LengthUnit.MILLIMETRE;
    }
    if (column.endsWith("_in")) {
      return LengthUnit.INCH;
    }
    throw new IllegalArgumentException(column + " ends in neither _mm nor _in, so has no unit");
  }

  private static TableFormatException fault(int line, String column, String what) {
    return new TableFormatException("line " + line, List.of("column " + column + ": " + what));
  }
}
