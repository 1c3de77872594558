package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
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
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.WorkbookLayout;
import zonewright.workbook.kit.WorkbookNames;
import zonewright.workbook.pack.PackOrder;
import zonewright.workbook.pack.PackSheets;

/** A spreadsheet program marks the cells that the findings of the program go to. */
class RuleMarksTest {
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
    try (XSSFWorkbook workbook = DesignWorkbook.of(design, PackOrder.of(PackSheets.standing()))) {
      asValues(workbook);
      Set<String> beyondTheLibrary = withoutNewerFunctions(workbook);
      ConditionalFormattingEvaluator formats =
          new ConditionalFormattingEvaluator(workbook, new XSSFFormulaEvaluator(workbook));
      RuleMarks rules = new RuleMarks(WorkbookLayout.of(design.book()));
      for (TableDefinition table : design.book().blueprint().tables()) {
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
            boolean shown = marked(workbook, formats, table, rule.cell(), row, ids);
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
      XSSFWorkbook workbook,
      ConditionalFormattingEvaluator formats,
      TableDefinition table,
      Reference column,
      int row,
      Set<String> names) {
    Cell cell = cell(workbook, table, column, row);
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
      XSSFWorkbook workbook, TableDefinition table, Reference reference, int row) {
    Column column =
        table.columns().stream()
            .filter(each -> each.reference().equals(reference))
            .findFirst()
            .orElseThrow();
    if (!table.single()) {
      int position = table.columns().indexOf(column);
      return workbook.getSheet(table.title()).getRow(TableSheet.FIRST_ROW + row).getCell(position);
    }
    String place = workbook.getName(WorkbookNames.defined(table, column)).getRefersToFormula();
    CellReference found = new CellReference(place);
    return workbook.getSheet(found.getSheetName()).getRow(found.getRow()).getCell(found.getCol());
  }

  /** The library cannot calculate all of it: what the cells show takes the place of formulas. */
  private static void asValues(XSSFWorkbook workbook) {
    List<Cell> formulas = new ArrayList<>();
    for (Sheet sheet : workbook) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA) {
            formulas.add(cell);
          }
        }
      }
    }
    for (Cell cell : formulas) {
      boolean number = cell.getCachedFormulaResultType() == CellType.NUMERIC;
      double value = number ? cell.getNumericCellValue() : 0;
      String words = number ? "" : cell.getStringCellValue();
      cell.setBlank();
      if (number) {
        cell.setCellValue(value);
      } else {
        cell.setCellValue(words);
      }
    }
  }
}
