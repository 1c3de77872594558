package zonewright.workbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.FontFormatting;
import org.apache.poi.ss.usermodel.PatternFormatting;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTConditionalFormatting;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;
import zonewright.design.IrrigationSheets;
import zonewright.design.OwnColumns;
import zonewright.formula.Dependencies;
import zonewright.formula.Expressed;
import zonewright.formula.SpreadsheetText;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.Schema;
import zonewright.sheet.Severity;
import zonewright.sheet.TableDefinition;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.MarkNames;
import zonewright.workbook.kit.SheetColumn;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.kit.WorkbookLayout;

/**
 * Marks a cell where one of the rules finds something to check, live, for whoever changes the
 * workbook elsewhere. A rule whose condition looks beyond its own row and the cells known by a name
 * has no mark; its findings stand on the cover as they were.
 */
final class RuleMarks {
  private static final String FILL = "F8CBB9";
  private static final String INK = "6E2412";
  private static final String TYPED_OVER = name("typed over a usual value");

  private final Schema schema;
  private final WorkbookLayout layout;

  /** The rules of the program, and the limits a person set on columns of their own. */
  private final List<Rule> rules;

  RuleMarks(Book book, WorkbookLayout layout) {
    this.schema = layout.schema();
    this.layout = layout;
    this.rules =
        Stream.concat(IrrigationSheets.rules().stream(), OwnColumns.of(book).rules().stream())
            .toList();
  }

  /** Returns the rules that have a mark in a table. */
  Stream<Rule> marked(TableDefinition table) {
    return ofTable(table)
        .filter(rule -> condition(rule, table, (column, typed) -> "A1").isPresent());
  }

  private Stream<Rule> ofTable(TableDefinition table) {
    return rules.stream()
        .filter(rule -> rule.severity() != Severity.NOTE)
        .filter(rule -> rule.table().equals(table.id()))
        .filter(rule -> rule.cell().table().equals(table.id()));
  }

  /**
   * Marks the cells of a table with many rows; marks of an earlier writing go.
   *
   * @param places where the columns stand
   */
  void rows(
      XSSFSheet sheet,
      TableDefinition table,
      Map<SheetColumn, Integer> places,
      int firstRow,
      int lastRow) {
    clear(sheet, table);
    MarkNames.Cells cells =
        (column, typed) ->
            cell(
                firstRow,
                (typed ? place(places, SheetColumn.Role.TYPED, column) : good(places, column))
                    .orElse(null));
    ofTable(table)
        .forEach(
            rule -> {
              Column marked = schema.column(rule.cell());
              Integer position = layout.has(marked) ? places.get(layout.shown(marked)) : null;
              if (position != null) {
                condition(rule, table, cells)
                    .ifPresent(
                        when ->
                            mark(
                                sheet,
                                when,
                                new CellRangeAddress(firstRow, lastRow, position, position)));
              }
            });
    typedOver(sheet, table, places, firstRow, lastRow);
  }

  /** Marks figures typed over a usual value in the sheet itself, as what is typed looks. */
  private void typedOver(
      XSSFSheet sheet,
      TableDefinition table,
      Map<SheetColumn, Integer> places,
      int firstRow,
      int lastRow) {
    CellRangeAddress[] cells =
        places.entrySet().stream()
            .filter(place -> place.getKey().role() == SheetColumn.Role.VALUE)
            .filter(place -> layout.takesTyping(table, place.getKey()))
            .map(Map.Entry::getValue)
            .map(position -> new CellRangeAddress(firstRow, lastRow, position, position))
            .toArray(CellRangeAddress[]::new);
    if (cells.length == 0) {
      return;
    }
    String first =
        new CellReference(firstRow, cells[0].getFirstColumn(), false, false).formatAsString();
    XSSFSheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
    ConditionalFormattingRule rule =
        formats.createConditionalFormattingRule(
            "AND(%s,NOT(_xlfn.ISFORMULA(%s)))".formatted(TYPED_OVER, first));
    PatternFormatting fill = rule.createPatternFormatting();
    fill.setFillBackgroundColor(Styles.colour(CellStyleName.INPUT.fill()));
    fill.setFillPattern(PatternFormatting.SOLID_FOREGROUND);
    formats.addConditionalFormatting(cells, rule);
  }

  /** Where the cells stand to calculate with. */
  private static Optional<Integer> good(Map<SheetColumn, Integer> places, Column column) {
    return place(places, SheetColumn.Role.VALUE, column)
        .or(() -> place(places, SheetColumn.Role.CHECKED, column))
        .or(() -> place(places, SheetColumn.Role.TYPED, column));
  }

  private static Optional<Integer> place(
      Map<SheetColumn, Integer> places, SheetColumn.Role role, Column column) {
    return places.entrySet().stream()
        .filter(place -> place.getKey().is(role, column))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /**
   * Marks the cells of a one-row table; marks of an earlier writing go.
   *
   * @param lines in which row of the sheet each column has its line
   * @param position where the values stand
   */
  void single(XSSFSheet sheet, TableDefinition table, Map<Column, Integer> lines, int position) {
    clear(sheet, table);
    ofTable(table)
        .forEach(
            rule -> {
              Integer row = lines.get(schema.column(rule.cell()));
              if (row != null) {
                condition(rule, table, (column, typed) -> "")
                    .ifPresent(
                        when ->
                            mark(sheet, when, new CellRangeAddress(row, row, position, position)));
              }
            });
  }

  private static String cell(int row, Integer position) {
    return position == null ? null : new CellReference(row, position, false, true).formatAsString();
  }

  private Optional<String> condition(Rule rule, TableDefinition table, MarkNames.Cells cells) {
    Dependencies needs = Dependencies.of(rule.when());
    boolean there = needs.cells().stream().allMatch(cell -> layout.has(schema.column(cell)));
    if (!there) {
      return Optional.empty();
    }
    MarkNames names = new MarkNames(schema, table, cells);
    String test =
        SpreadsheetText.of(Expressed.in(schema.meant(rule.when()), layout.system()), names);
    return names.plain()
        ? Optional.of("IFERROR(AND(%s,%s),FALSE)".formatted(name(rule), test))
        : Optional.empty();
  }

  /** True in a formula, and tells whose mark it is. */
  private static String name(Rule rule) {
    return name(rule.id());
  }

  private static String name(String mark) {
    return "LEN(" + SpreadsheetText.quoted(mark) + ")>0";
  }

  private static void mark(XSSFSheet sheet, String when, CellRangeAddress cells) {
    XSSFSheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
    ConditionalFormattingRule rule = formats.createConditionalFormattingRule(when);
    FontFormatting font = rule.createFontFormatting();
    font.setFontStyle(false, true);
    font.setFontColor(Styles.colour(INK));
    PatternFormatting fill = rule.createPatternFormatting();
    fill.setFillBackgroundColor(Styles.colour(FILL));
    fill.setFillPattern(PatternFormatting.SOLID_FOREGROUND);
    formats.addConditionalFormatting(
        new CellRangeAddress[] {cells}, new ConditionalFormattingRule[] {rule});
  }

  private void clear(XSSFSheet sheet, TableDefinition table) {
    // a limit of one's own may be gone since; its mark is known by how its name begins
    String own = "LEN(\"" + OwnColumns.idOfRules(table);
    List<String> names =
        Stream.concat(ofTable(table).map(RuleMarks::name), Stream.of(TYPED_OVER, own)).toList();
    CTWorksheet content = sheet.getCTWorksheet();
    for (int i = content.sizeOfConditionalFormattingArray() - 1; i >= 0; i--) {
      CTConditionalFormatting format = content.getConditionalFormattingArray(i);
      for (int j = format.sizeOfCfRuleArray() - 1; j >= 0; j--) {
        boolean ours =
            Stream.of(format.getCfRuleArray(j).getFormulaArray())
                .anyMatch(formula -> names.stream().anyMatch(formula::contains));
        if (ours) {
          format.removeCfRule(j);
        }
      }
      if (format.sizeOfCfRuleArray() == 0) {
        content.removeConditionalFormatting(i);
      }
    }
  }
}
