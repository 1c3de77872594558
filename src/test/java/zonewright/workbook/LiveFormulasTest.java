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
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
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
import zonewright.workbook.kit.ColumnFormulas;
import zonewright.workbook.kit.WorkbookNames;

/** An independent spreadsheet program gets from our formulas what our engine gets. */
class LiveFormulasTest {
  private static final double TOLERANCE = 1e-12;

  /** Where powers and functions are in the chain, two programs may differ by more. */
  private static final double LOOSER = 1e-9;

  private static final Pattern POWERS = Pattern.compile("(POWER|SQRT|EXP|LN|SIN|COS|TAN)\\(");

  private final Map<Reference, Boolean> rough = new HashMap<>();

  @TempDir Path folder;

  /** Each kind of design in one unit system, in turn; in a long run in both. */
  static List<Design> designs() {
    List<Design> all = Designs.all();
    int kinds = all.size() / 2;
    List<Design> some = new ArrayList<>();
    for (int kind = 0; kind < kinds; kind++) {
      some.add(all.get(kind + kind % 2 * kinds));
      if (Counts.of(1, 2) == 2) {
        some.add(all.get(kind + (1 - kind % 2) * kinds));
      }
    }
    return some;
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
    int formulas = 0;
    try (XSSFWorkbook theirs = new XSSFWorkbook(Files.newInputStream(answer));
        XSSFWorkbook ours = new XSSFWorkbook(Files.newInputStream(file))) {
      Book book = design.book();
      ColumnFormulas texts = new ColumnFormulas(book.blueprint(), book.system());
      for (TableDefinition table : book.blueprint().tables()) {
        formulas += formulas(ours.getSheet(table.title()));
        formulas -= table.other().map(other -> Math.max(1, book.rows(other))).orElse(0);
        for (int position = 0; position < table.columns().size(); position++) {
          Column column = table.columns().get(position);
          int rows = book.rows(table.id());
          for (int row = 0; row < rows; row++) {
            CellReference place = place(ours, table, column, position, row);
            XSSFCell formula = cell(ours, table, place);
            if (formula != null && formula.getCellType() == CellType.FORMULA) {
              compared++;
              judge(book, texts, column, row, cell(theirs, table, place), formula, wrong);
            }
          }
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(Inputs.differences(design, DesignFile.read(answer).design()))
        .as("the other program's file brings every input back, but for its last digits")
        .isEmpty();
    int blankRows =
        (int)
            design.book().blueprint().tables().stream()
                .filter(table -> design.book().rows(table.id()) == 0)
                .mapToLong(
                    table -> table.columns().stream().filter(c -> c.formula().isPresent()).count())
                .sum();
    assertThat(compared).as("all formulas were looked at").isEqualTo(formulas - blankRows);
  }

  private static int formulas(XSSFSheet sheet) {
    int count = 0;
    for (Row row : sheet) {
      for (Cell cell : row) {
        count += cell.getCellType() == CellType.FORMULA ? 1 : 0;
      }
    }
    return count;
  }

  private static CellReference place(
      XSSFWorkbook workbook, TableDefinition table, Column column, int position, int row) {
    if (!table.single()) {
      return new CellReference(TableSheet.FIRST_ROW + row, position);
    }
    XSSFName name = workbook.getName(WorkbookNames.defined(table, column));
    return new CellReference(name.getRefersToFormula());
  }

  private static XSSFCell cell(XSSFWorkbook workbook, TableDefinition table, CellReference place) {
    XSSFSheet sheet = workbook.getSheet(table.title());
    XSSFRow row = sheet.getRow(place.getRow());
    return row == null ? null : row.getCell(place.getCol());
  }

  private void judge(
      Book book,
      ColumnFormulas formulas,
      Column column,
      int row,
      XSSFCell theirs,
      XSSFCell ours,
      List<String> wrong) {
    String where = "%s row %d".formatted(column, row);
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
      double tolerance = rough(book, formulas, column) ? LOOSER : TOLERANCE;
      if (Math.abs(got - number) > tolerance * Math.abs(number)) {
        wrong.add(String.format(Locale.ROOT, "%s: %s, engine %s: %s", where, got, number, formula));
      }
    }
  }

  /** Whether a power or a function is among what a column is calculated from. */
  private boolean rough(Book book, ColumnFormulas formulas, Column column) {
    Boolean before = rough.get(column.reference());
    if (before != null) {
      return before;
    }
    Formula formula = column.formula().orElse(null);
    boolean found = false;
    if (formula != null) {
      Dependencies needs = Dependencies.of(formula);
      found =
          POWERS.matcher(formulas.text(column)).find()
              || Stream.concat(needs.cells().stream(), needs.columns().stream())
                  .anyMatch(need -> rough(book, formulas, book.blueprint().column(need)));
    }
    rough.put(column.reference(), found);
    return found;
  }
}
