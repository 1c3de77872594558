package zonewright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import zonewright.design.Design;
import zonewright.formula.Dependencies;
import zonewright.formula.Formula;
import zonewright.formula.Outcome;
import zonewright.formula.Reference;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.TableDefinition;
import zonewright.spreadsheet.CachedResults;
import zonewright.spreadsheet.SpreadsheetProgram;
import zonewright.testing.Counts;
import zonewright.workbook.kit.SheetColumn;
import zonewright.workbook.kit.WorkbookLayout;
import zonewright.workbook.kit.WorkbookNames;

/** An independent spreadsheet program gets from our formulas what our engine gets. */
class LiveFormulasTest {
  private static final double TOLERANCE = 1e-12;

  /** Where powers and functions are in the chain, two programs may differ by more. */
  private static final double LOOSER = 1e-9;

  private static final Pattern POWERS = Pattern.compile("(POWER|SQRT|EXP|LN|SIN|COS|TAN)\\(");

  private final Map<Reference, Boolean> rough = new HashMap<>();

  @TempDir Path folder;

  static List<Design> designs() {
    return Designs.eachKind();
  }

  @ParameterizedTest
  @Tag(Counts.LONG)
  @MethodSource("designs")
  void everyCellHasTheEnginesNumberOrNone(Design design) throws DesignFileException, IOException {
    SpreadsheetProgram.require();
    Path file = folder.resolve("garden.xlsx");
    Path stripped = folder.resolve("stripped.xlsx");
    DesignFile.write(design, file);
    CachedResults.strip(file, stripped);
    Path answer = SpreadsheetProgram.recalculate(stripped, folder);
    List<String> wrong = new ArrayList<>();
    int compared = 0;
    try (XSSFWorkbook theirs = new XSSFWorkbook(Files.newInputStream(answer));
        XSSFWorkbook ours = new XSSFWorkbook(Files.newInputStream(file))) {
      Book book = design.book();
      WorkbookLayout layout = DesignWorkbook.layout(design, false);
      for (TableDefinition table : book.schema().tables()) {
        if (ours.getSheet(table.title()) == null) {
          continue;
        }
        List<SheetColumn> columns = layout.columns(table);
        for (int position = 0; position < columns.size(); position++) {
          SheetColumn column = columns.get(position);
          if (column.role() != SheetColumn.Role.VALUE
              || column.column().get().formula().isEmpty()) {
            continue;
          }
          int rows = book.rows(table.id());
          for (int row = 0; row < rows; row++) {
            CellReference place = place(ours, table, column.column().get(), position, row);
            compared++;
            judge(
                book,
                layout,
                column.column().get(),
                row,
                cell(theirs, table, place),
                cell(ours, table, place),
                wrong);
          }
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(Inputs.differences(design, DesignFile.read(answer).design()))
        .as("the other program's file brings every input back, but for its last digits")
        .isEmpty();
    assertThat(compared).as("formulas were looked at").isGreaterThan(300);
  }

  private static CellReference place(
      XSSFWorkbook workbook, TableDefinition table, Column column, int position, int row) {
    if (!table.single()) {
      return new CellReference(TableSheet.FIRST_ROW + row, position);
    }
    XSSFName name = workbook.getName(WorkbookNames.defined(table, column));
    assertThat(name).as(WorkbookNames.defined(table, column)).isNotNull();
    return new CellReference(name.getRefersToFormula());
  }

  private static XSSFCell cell(XSSFWorkbook workbook, TableDefinition table, CellReference place) {
    XSSFSheet sheet = workbook.getSheet(table.title());
    XSSFRow row = sheet.getRow(place.getRow());
    return row == null ? null : row.getCell(place.getCol());
  }

  private void judge(
      Book book,
      WorkbookLayout layout,
      Column column,
      int row,
      XSSFCell theirs,
      XSSFCell ours,
      List<String> wrong) {
    String where = "%s row %d".formatted(column, row);
    if (ours == null || ours.getCellType() != CellType.FORMULA) {
      wrong.add(where + " has no formula: " + ours);
      return;
    }
    String formula = ours.getCellFormula();
    if (theirs == null) {
      wrong.add(where + " is gone");
      return;
    }
    CellType type =
        theirs.getCellType() == CellType.FORMULA
            ? theirs.getCachedFormulaResultType()
            : theirs.getCellType();
    double number = book.number(column.reference(), row);
    if (column.content() == Column.Content.CHOICE) {
      String expected =
          book.outcome(column.reference(), row) instanceof Outcome.Words words ? words.text() : "";
      String got = type == CellType.STRING ? theirs.getStringCellValue() : type.toString();
      if (!expected.isEmpty() && !expected.equals(got)) {
        wrong.add("%s: %s, not %s: %s".formatted(where, got, expected, formula));
      }
    } else if (Double.isNaN(number) == (type == CellType.NUMERIC)) {
      String got = type == CellType.NUMERIC ? theirs.getNumericCellValue() + "" : type.toString();
      wrong.add(
          "%s: %s, engine %s: %s"
              .formatted(where, got, book.outcome(column.reference(), row), formula));
    } else if (!Double.isNaN(number)) {
      double got = theirs.getNumericCellValue();
      double tolerance = rough(book, layout, column) ? LOOSER : TOLERANCE;
      if (Math.abs(got - number) > tolerance * magnitude(book, column, row, number)) {
        wrong.add(String.format(Locale.ROOT, "%s: %s, engine %s: %s", where, got, number, formula));
      }
    }
  }

  /** The greatest number that goes into a result: differences of great ones lose digits. */
  private static double magnitude(Book book, Column column, int row, double number) {
    return Dependencies.of(column.formula().orElseThrow()).cells().stream()
        .filter(cell -> cell.table().equals(column.reference().table()))
        .mapToDouble(cell -> Math.abs(book.number(cell, row)))
        .filter(Double::isFinite)
        .reduce(Math.abs(number), Math::max);
  }

  /** Whether a power or a function is among what a column is calculated from. */
  private boolean rough(Book book, WorkbookLayout layout, Column column) {
    Boolean before = rough.get(column.reference());
    if (before != null) {
      return before;
    }
    Formula formula = column.formula().orElse(null);
    boolean found = false;
    if (formula != null) {
      Dependencies needs = Dependencies.of(formula);
      found =
          layout.columns(book.schema().table(column.reference().table())).stream()
                  .filter(each -> each.column().filter(column::equals).isPresent())
                  .anyMatch(each -> POWERS.matcher(each.formula().orElse("")).find())
              || Stream.concat(needs.cells().stream(), needs.columns().stream())
                  .anyMatch(need -> rough(book, layout, book.schema().column(need)));
    }
    rough.put(column.reference(), found);
    return found;
  }
}
