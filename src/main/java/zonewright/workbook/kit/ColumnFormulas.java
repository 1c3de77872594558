package zonewright.workbook.kit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import zonewright.formula.Expressed;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.formula.SpreadsheetNames;
import zonewright.formula.SpreadsheetText;
import zonewright.sheet.Blueprint;
import zonewright.sheet.Column;
import zonewright.units.UnitSystem;

/** The formula that stands in the cells of a column, made once for each column. */
public final class ColumnFormulas {
  private final WorkbookNames names;
  private final UnitSystem system;
  private final Map<Reference, String> known = new HashMap<>();

  /** Prepares for the sheets of a blueprint in one unit system. */
  public ColumnFormulas(Blueprint blueprint, UnitSystem system) {
    this.names = new WorkbookNames(blueprint, system);
    this.system = system;
  }

  /** Returns what the workbook calls cells, columns and tables. */
  public WorkbookNames names() {
    return names;
  }

  /** Returns the text, without the equals sign, of a column that has a formula. */
  public String text(Column column) {
    return known.computeIfAbsent(column.reference(), any -> make(column));
  }

  private String make(Column column) {
    Formula formula = column.formula().orElseThrow();
    Formula plain = Expressed.in(formula, system, column.kind().unit(system));
    if (column.content() != Column.Content.CHOICE) {
      return SpreadsheetText.of(plain, names);
    }
    List<String> fixed = column.words().orElseThrow().constant().orElse(List.of());
    if (inWords(plain, fixed)) {
      return SpreadsheetText.of(worded(plain, fixed), names);
    }
    String position = SpreadsheetText.of(plain, names);
    return "IF(ISNUMBER(%s),%s,%s)".formatted(position, nth(column, position, fixed), position);
  }

  private String nth(Column column, String position, List<String> fixed) {
    if (names.words(column.reference()).orElseThrow()
        instanceof SpreadsheetNames.Words.InCells list) {
      return "INDEX(%s,%s+1)".formatted(list.name(), position);
    }
    return "CHOOSE(%s+1,%s)"
        .formatted(
            position, String.join(",", fixed.stream().map(SpreadsheetText::quoted).toList()));
  }

  /** Whether each outcome of a choice is a word that can be written down, or found in a list. */
  private static boolean inWords(Formula plain, List<String> fixed) {
    if (plain instanceof Formula.Choose choose) {
      return inWords(choose.then(), fixed) && inWords(choose.otherwise(), fixed);
    }
    return plain instanceof Formula.Nothing
        || plain instanceof Formula.Pick
        || (plain instanceof Formula.Constant && !fixed.isEmpty());
  }

  private static Formula worded(Formula plain, List<String> fixed) {
    if (plain instanceof Formula.Choose choose) {
      return new Formula.Choose(
          choose.condition(), worded(choose.then(), fixed), worded(choose.otherwise(), fixed));
    }
    return plain instanceof Formula.Constant constant
        ? new Formula.Nothing(fixed.get((int) constant.value()), "", false)
        : plain;
  }
}
