package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.formula.ConditionalFormattingEvaluator;
import org.apache.poi.ss.formula.EvaluationConditionalFormatRule;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.SheetConditionalFormatting;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import zonewright.design.Design;
import zonewright.design.Finding;
import zonewright.design.IrrigationSheets;
import zonewright.design.Sample;
import zonewright.formula.Reference;
import zonewright.sheet.Column;
import zonewright.sheet.Rule;
import zonewright.sheet.TableDefinition;
import zonewright.spreadsheet.SpreadsheetProgram;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.WorkbookLayout;
import zonewright.workbook.kit.WorkbookNames;

/** A spreadsheet program marks the cells that the findings of the program go to. */
class RuleMarksTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"library-garden", "campus-retrofit", "homework"})
  void theCellsMarkedAreThoseWithFindings(String name) throws Exception {
    Design design = Sample.named(name).orElseThrow().design(UnitSystem.US);
    Set<String> found = new HashSet<>();
    for (Finding finding : design.findings()) {
      found.add(place(finding.column(), finding.row()));
    }
    int marks = 0;
    int seen = 0;
    SpreadsheetProgram.require();
    Path file = folder.resolve("marked.xlsx");
    DesignFile.write(design, file);
    Path answer = SpreadsheetProgram.recalculate(file, folder);
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file));
        XSSFWorkbook answers = new XSSFWorkbook(Files.newInputStream(answer))) {
      asValues(workbook, answers);
      Set<String> beyondTheLibrary = withoutNewerFunctions(workbook);
      ConditionalFormattingEvaluator formats =
          new ConditionalFormattingEvaluator(workbook, new XSSFFormulaEvaluator(workbook));
      WorkbookLayout layout = DesignWorkbook.layout(design, false);
      RuleMarks rules = new RuleMarks(design.book(), layout);
      for (TableDefinition table : design.book().schema().tables()) {
        if (workbook.getSheet(table.title()) == null) {
          continue;
        }
        List<Rule> marked =
            rules
                .marked(table)
                .filter(rule -> beyondTheLibrary.stream().noneMatch(text -> names(text, rule)))
                .toList();
        Set<String> ids = new HashSet<>();
        marked.forEach(rule -> ids.add("LEN(\"" + rule.id() + "\")>0"));
        marks += marked.size();
        for (Rule rule : marked) {
          for (int row = 0; row < design.book().rows(table.id()); row++) {
            boolean shown = marked(cell(workbook, layout, table, rule.cell(), row), formats, ids);
            seen += shown ? 1 : 0;
            boolean expected = found.contains(place(rule.cell(), row));
            if (shown || onlyMarked(rule, marked)) {
              assertThat(shown).as(rule.id() + " in row " + row).isEqualTo(expected);
            }
          }
        }
      }
    }
    assertThat(marks).as("rules that mark live").isGreaterThan(20);
    if (name.equals("library-garden")) {
      assertThat(seen).as("cells marked").isPositive();
    }
  }

  /** Whether all that can be found at the rule's cell is found by rules with marks. */
  private static boolean onlyMarked(Rule rule, List<Rule> marked) {
    return IrrigationSheets.rules().stream()
        .filter(each -> each.cell().equals(rule.cell()))
        .allMatch(each -> marked.contains(each));
  }

  private static String place(Reference column, int row) {
    return column.key() + " " + row;
  }

  private static boolean marked(
      Cell cell, ConditionalFormattingEvaluator formats, Set<String> names) {
    if (cell == null) {
      return false;
    }
    for (EvaluationConditionalFormatRule rule : formats.getConditionalFormattingForCell(cell)) {
      if (names.stream().anyMatch(rule.getFormula1()::contains)) {
        return true;
      }
    }
    return false;
  }

  private static boolean names(String format, Rule rule) {
    return format.contains("LEN(\"" + rule.id() + "\")>0");
  }

  /** Takes out the formats the library cannot calculate, and returns their formulas. */
  private static Set<String> withoutNewerFunctions(XSSFWorkbook workbook) {
    Set<String> out = new HashSet<>();
    for (Sheet sheet : workbook) {
      SheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
      for (int i = formats.getNumConditionalFormattings() - 1; i >= 0; i--) {
        String formula = formats.getConditionalFormattingAt(i).getRule(0).getFormula1();
        if (formula.contains("_xlfn.")) {
          out.add(formula);
          formats.removeConditionalFormatting(i);
        }
      }
    }
    return out;
  }

  private static Cell cell(
      XSSFWorkbook workbook,
      WorkbookLayout layout,
      TableDefinition table,
      Reference reference,
      int row) {
    Column column = layout.schema().column(reference);
    if (!layout.has(column)) {
      return null;
    }
    if (!table.single()) {
      int position = layout.columns(table).indexOf(layout.shown(column));
      return workbook.getSheet(table.title()).getRow(TableSheet.FIRST_ROW + row).getCell(position);
    }
    String place = workbook.getName(WorkbookNames.defined(table, column)).getRefersToFormula();
    CellReference found = new CellReference(place);
    return workbook.getSheet(found.getSheetName()).getRow(found.getRow()).getCell(found.getCol());
  }

  /**
   * The library cannot calculate all of it: what an independent program finds takes the place of
   * formulas.
   */
  private static void asValues(XSSFWorkbook workbook, XSSFWorkbook answers) {
    for (Sheet sheet : workbook) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA) {
            Row answer = answers.getSheet(sheet.getSheetName()).getRow(row.getRowNum());
            take(cell, answer.getCell(cell.getColumnIndex()));
          }
        }
      }
    }
  }

  private static void take(Cell cell, Cell answer) {
    cell.setBlank();
    switch (answer.getCachedFormulaResultType()) {
      case NUMERIC -> cell.setCellValue(answer.getNumericCellValue());
      case STRING -> cell.setCellValue(answer.getStringCellValue());
      case BOOLEAN -> cell.setCellValue(answer.getBooleanCellValue());
      case ERROR -> cell.setCellErrorValue(answer.getErrorCellValue());
      default -> {}
    }
  }
}
