package zonewright.workbook.kit;

import java.util.List;
import java.util.Optional;
import zonewright.formula.Expressed;
import zonewright.formula.Formula;
import zonewright.formula.Reference;
import zonewright.formula.SpreadsheetSteps;
import zonewright.formula.SpreadsheetText;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.sheet.Schema;
import zonewright.sheet.TableDefinition;
import zonewright.sheet.WordList;
import zonewright.units.QuantityKind;
import zonewright.units.UnitSystem;

/** The formulas of the cells of a workbook: what is checked, looked up, usual, in steps, used. */
final class CellFormulas {
  private final Schema schema;
  private final UnitSystem system;
  private final Equations equations;
  private final WorkbookColumns columns;
  private final WorkbookNames.Wanted wanted;

  /**
   * Prepares for a workbook.
   *
   * @param wanted takes note of what else must be there for the formulas
   */
  CellFormulas(
      Schema schema,
      UnitSystem system,
      Equations equations,
      WorkbookColumns columns,
      WorkbookNames.Wanted wanted) {
    this.schema = schema;
    this.system = system;
    this.equations = equations;
    this.columns = columns;
    this.wanted = wanted;
  }

  List<SheetColumn> rows(Column column, WorkbookNames names) {
    TableDefinition table = schema.table(column.reference().table());
    // Where a usual word may stand for a blank, it is that word's row; names stand as they are.
    String cell =
        column.role() == Column.Role.INPUT
            ? named(table, column, names)
            : names.cell(column.reference());
    return wanted.rows.stream()
        .filter(row -> row.word().equals(column.reference()))
        .map(
            row ->
                SheetColumn.of(
                    SheetColumn.Role.ROW,
                    column,
                    row.heading(),
                    SpreadsheetText.match(cell, row.list(), published(row.list()))))
        .toList();
  }

  /** Whether a list is one of the trade, in which every row has words. */
  private boolean published(String list) {
    return schema.tables().stream().noneMatch(table -> list.startsWith(table.title() + "["));
  }

  private String named(TableDefinition table, Column column, WorkbookNames names) {
    return table.takesEntries(column)
        ? names.typed(column.reference())
        : names.own(column.heading(system));
  }

  /** The first column of those needed in which nothing good was typed. */
  String missing(TableDefinition table, List<Column> needed, WorkbookNames names) {
    String first = WorkbookNames.escaped(WorkbookNames.checkedHeading(needed.get(0)));
    String last =
        WorkbookNames.escaped(WorkbookNames.checkedHeading(needed.get(needed.size() - 1)));
    String title = table.title();
    String lacks = "ISERROR(%s[[#This Row],[%s]:[%s]])".formatted(title, first, last);
    return "IF(%s*SUMPRODUCT(--%s),LOOKUP(2,1/%s,%s[[#Headers],[%s]:[%s]]),\"\")"
        .formatted(names.own(WorkbookNames.FILLED_IN), lacks, lacks, title, first, last);
  }

  String inUse(TableDefinition table, List<SheetColumn> all, WorkbookNames names) {
    if (table.other().isPresent()) {
      TableDefinition other = schema.table(table.other().get());
      wanted.counted.add(other.id());
      return "INDEX(%s,%s)"
          .formatted(
              WorkbookNames.whole(other, WorkbookNames.FILLED_IN),
              names.own(names.joinHeading(other.id())));
    }
    List<SheetColumn> entered =
        all.stream().filter(each -> each.role() == SheetColumn.Role.TYPED).toList();
    return "IF(COUNTA(%s[[#This Row],[%s]:[%s]])>0,1,0)"
        .formatted(
            table.title(),
            WorkbookNames.escaped(entered.get(0).heading()),
            WorkbookNames.escaped(entered.get(entered.size() - 1).heading()));
  }

  /** Returns what was typed where it is good, else an error. */
  String checked(TableDefinition table, Column column, WorkbookNames names) {
    String cell = names.typed(column.reference());
    if (column.content() == Column.Content.CHOICE) {
      WordList list = names.list(column).orElseThrow();
      return list instanceof WordList.Fixed
          ? "IF(SUMPRODUCT(--(%s=%s)),%s,NA())"
              .formatted(WorkbookNames.limit(table, column, "words"), cell, cell)
          : "IF(%s,%s)".formatted(names.row(column.reference()), cell);
    }
    Optional<Bounds> bounds = column.bounds();
    if (bounds.isEmpty()) {
      return "IF(ISNUMBER(%s),%s,NA())".formatted(cell, cell);
    }
    String within = "%s,%s".formatted(cell, WorkbookNames.limit(table, column, "from"));
    if (!Double.isInfinite(bounds.get().high())) {
      within += ",%s,%s".formatted(cell, WorkbookNames.limit(table, column, "to"));
    }
    String whole = bounds.get().whole() ? "*(%s=INT(%s))".formatted(cell, cell) : "";
    return "IF(COUNTIFS(%s)%s,%s,NA())".formatted(within, whole, cell);
  }

  /** The formula of the value; none where what is typed is all there is. */
  Optional<String> value(
      TableDefinition table, Column column, WorkbookNames names, List<SheetColumn> between) {
    boolean single = table.single();
    if (column.role() == Column.Role.INPUT) {
      return single && column.content() != Column.Content.WORDS
          ? Optional.of(checked(table, column, names))
          : Optional.empty();
    }
    if (table.givenNames() && column.equals(table.columns().get(0))) {
      return Optional.empty();
    }
    Formula plain =
        Expressed.in(equations.of(column).orElseThrow(), system, column.kind().unit(system));
    boolean own = columns.typed(column);
    boolean figure = plain instanceof Formula.Constant && column.role() == Column.Role.DEFAULTED;
    if (!own && !figure) {
      return Optional.of(stepped(column, plain, names, between));
    }
    String usual;
    if (figure) {
      usual = WorkbookNames.limit(table, column, "usual");
    } else {
      String text = stepped(column, plain, names, between);
      String found = WorkbookNames.usualHeading(column);
      between.add(SheetColumn.of(SheetColumn.Role.USUAL, column, found, text));
      usual = single ? WorkbookNames.defined(table, found) : names.own(found);
    }
    if (!own) {
      return Optional.of(usual);
    }
    String heading = WorkbookNames.checkedHeading(column);
    between.add(
        SheetColumn.of(SheetColumn.Role.CHECKED, column, heading, checked(table, column, names)));
    return Optional.of(
        "IF(%s=\"\",%s,%s)"
            .formatted(
                names.typed(column.reference()),
                usual,
                single ? WorkbookNames.defined(table, heading) : names.own(heading)));
  }

  /** The formula of a column's equation; the steps on the way there go with the others. */
  private String stepped(
      Column column, Formula plain, WorkbookNames names, List<SheetColumn> between) {
    if (column.content() != Column.Content.CHOICE) {
      return inSteps(column, plain, names, between);
    }
    List<String> fixed = column.words().orElseThrow().constant().orElse(List.of());
    if (inWords(plain, fixed)) {
      return inSteps(column, worded(column, plain, fixed), names, between);
    }
    Reference position = WorkbookNames.step(column, between.size());
    String text = inSteps(column, plain, names, between);
    if (between.isEmpty() || text.length() > names.cell(position).length()) {
      position = WorkbookNames.step(column, between.size());
      between.add(SheetColumn.of(SheetColumn.Role.STEP, column, position.name(), text));
      text = names.cell(position);
    }
    WordList list = names.list(column).orElseThrow();
    TableDefinition table = schema.table(column.reference().table());
    String words = names.words(list).orElseGet(() -> WorkbookNames.limit(table, column, "words"));
    return "INDEX(%s,%s+1)".formatted(words, text);
  }

  private static String inSteps(
      Column column, Formula plain, WorkbookNames names, List<SheetColumn> between) {
    SpreadsheetSteps steps =
        SpreadsheetSteps.of(plain, names, step -> WorkbookNames.step(column, step));
    for (int i = 0; i < steps.steps().size(); i++) {
      between.add(
          SheetColumn.of(
              SheetColumn.Role.STEP,
              column,
              WorkbookNames.stepHeading(column, i),
              SpreadsheetText.of(steps.steps().get(i), names)));
    }
    return SpreadsheetText.of(steps.last(), names);
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
        || plain instanceof Formula.RowLookup
        || (plain instanceof Formula.Constant && !fixed.isEmpty());
  }

  private static Formula worded(Column column, Formula plain, List<String> fixed) {
    if (plain instanceof Formula.Choose choose) {
      return new Formula.Choose(
          choose.condition(),
          worded(column, choose.then(), fixed),
          worded(column, choose.otherwise(), fixed));
    }
    return plain instanceof Formula.Constant constant
        ? new Formula.Cell(WorkbookNames.word(column, fixed.get((int) constant.value())))
        : plain;
  }
}
