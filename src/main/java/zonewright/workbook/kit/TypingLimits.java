package zonewright.workbook.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import zonewright.formula.Expressed;
import zonewright.formula.Formula;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.units.UnitSystem;

/** The limits and the usual values of what is typed, and the words that can be chosen. */
public final class TypingLimits {
  private final WorkbookLayout layout;
  private final WorkbookColumns columns;
  private final Schema schema;
  private final UnitSystem system;

  /** Reads them from a layout. */
  TypingLimits(WorkbookLayout layout, WorkbookColumns columns) {
    this.layout = layout;
    this.columns = columns;
    this.schema = layout.schema();
    this.system = layout.system();
  }

  /**
   * The limits of what is typed into a column, in the units of the system, and what stands for a
   * blank.
   *
   * @param least the least number; not a number where there is none
   * @param most the greatest number; not a number where there is none
   * @param usual what stands for a blank: a number or a word; none where it is calculated
   */
  public record Limits(
      TableDefinition table, Column column, double least, double most, Optional<Object> usual) {}

  /** Returns the limits of all columns that have some, in the order of the sheets. */
  public List<Limits> all() {
    List<Limits> all = new ArrayList<>();
    for (TableDefinition table : schema.tables()) {
      for (Column column : columns.of(table)) {
        if (!column.takesEntries()) {
          continue;
        }
        Optional<Bounds> bounds = column.bounds();
        Optional<Object> usual = usual(column);
        if (usual.isPresent() || bounds.isPresent()) {
          double low = bounds.map(each -> each.low(column.kind(), system)).orElse(Double.NaN);
          double high = bounds.map(each -> each.high(column.kind(), system)).orElse(Double.NaN);
          all.add(
              new Limits(table, column, low, Double.isInfinite(high) ? Double.NaN : high, usual));
        }
      }
    }
    return all;
  }

  private Optional<Object> usual(Column column) {
    if (column.role() != Column.Role.DEFAULTED) {
      return Optional.empty();
    }
    if (column.usualWord().isPresent()) {
      return Optional.of(column.usualWord().get());
    }
    Formula plain =
        Expressed.in(column.formula().orElseThrow(), system, column.kind().unit(system));
    return plain instanceof Formula.Constant constant
        ? Optional.of(constant.value())
        : Optional.empty();
  }

  /** Returns the columns whose words are a few of the program's own, each with its words. */
  public Map<Column, List<String>> fixedWords() {
    Map<Column, List<String>> all = new LinkedHashMap<>();
    for (TableDefinition table : schema.tables()) {
      for (Column column : columns.of(table)) {
        if (column.content() == Column.Content.CHOICE
            && layout.names(table).list(column).orElseThrow() instanceof WordList.Fixed fixed) {
          all.put(column, fixed.words());
        }
      }
    }
    return all;
  }
}
