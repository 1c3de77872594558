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
import zonewright.sheet.TableDefinition;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;

/** The formula that stands in the cells of a column, made once for each column. */
public final class ColumnFormulas {
  private final Blueprint blueprint;
  private final UnitSystem system;
  private final Map<Reference, String> known = new HashMap<>();

  /** Prepares for the sheets of a blueprint in one unit system. */
  public ColumnFormulas(Blueprint blueprint, UnitSystem system) {
    this.blueprint = blueprint;
    this.system = system;
  }

  /** Returns what the workbook calls cells, columns and tables. */
  public WorkbookNames names() {
    return new WorkbookNames(blueprint, system, blueprint.tables().get(0));
  }

  /** Returns the text, without the equals sign, of a column that has a formula. */
  public String text(Column column) {
    return known.computeIfAbsent(column.reference(), any -> make(column));
  }

  /** Returns the text of the column that a table alongside another has for the rows of that. */
  public String place(TableDefinition table) {
    return new WorkbookNames(blueprint, system, table).place();
  }

  private String make(Column column) {
    WorkbookNames names =
        new WorkbookNames(blueprint, system, blueprint.table(column.reference().table()));
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
    String word = nth(column, position, fixed, names);
    return "IF(ISNUMBER(%s),%s,%s)".formatted(position, word, position);
  }

  private static String nth(
      Column column, String position, List<String> fixed, WorkbookNames names) {
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
    if (plain instanceof Formula.Cell cell) {
      return cell.reference().kind() == QuantityKind.CHOICE;
    }
    return plain instanceof Formula.Nothing
        || plain instanceof Formula.Pick
        || plain instanceof Formula.Find
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
