package zonewright.workbook;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.formula.NamedConstant;
import zonewright.formula.Numbers;
import zonewright.formula.SpreadsheetText;
import zonewright.sheet.Bounds;
import zonewright.sheet.Column;
import zonewright.units.UnitSystem;
import zonewright.workbook.kit.CellStyleName;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.kit.PageSetup;
import zonewright.workbook.kit.Styles;
import zonewright.workbook.kit.TypingLimits;
import zonewright.workbook.kit.WorkbookLayout;
import zonewright.workbook.kit.WorkbookNames;

/**
 * What formulas hold typed figures against, each in a cell that has a name: the least and the
 * greatest that is taken, what is used where nothing is typed, and the words of short lists.
 */
final class LimitsSheet {
  static final String TITLE = "Limits";

  private static final String[] HEADINGS = {
    "Sheet", "Item", "Unit", "Least", "Least taken", "Greatest", "From", "To", "Usual", "Words"
  };
  private static final int[] WIDTHS = {14, 34, 12, 14, 10, 14, 16, 16, 20, 20};

  /** Criteria hold fifteen digits of a number. */
  private static final double EQUAL_IN_CRITERIA = 1e-13;

  private static final String TINY = "0E+00";

  private static final int FROM = 6;
  private static final int TO = 7;
  private static final int USUAL = 8;
  private static final int WORDS = 9;

  private final XSSFWorkbook workbook;
  private final Styles styles;
  private final Set<String> named = new HashSet<>();
  private XSSFSheet sheet;
  private int row;

  LimitsSheet(XSSFWorkbook workbook, Styles styles) {
    this.workbook = workbook;
    this.styles = styles;
  }

  /** Writes the sheet. */
  XSSFSheet write(WorkbookLayout layout, String project) {
    sheet = workbook.createSheet(TITLE);
    for (int i = 0; i < HEADINGS.length; i++) {
      words(i, HEADINGS[i], CellStyleName.HEADING);
      sheet.setColumnWidth(i, WIDTHS[i] * 256);
    }
    row++;
    constant("As good as whole", SpreadsheetText.WHOLE_ENOUGH, Numbers.WHOLE_ENOUGH, TINY);
    constant("As good as a half", SpreadsheetText.HALF_ENOUGH, Numbers.HALF_ENOUGH, TINY);
    constant("As good as equal, as a part", SpreadsheetText.EQUAL_ENOUGH, EQUAL_IN_CRITERIA, TINY);
    for (NamedConstant constant : NamedConstant.values()) {
      words(WORDS, constant.words(), CellStyleName.SMALL);
      constant(constant.title().replace('_', ' '), constant.title(), constant.value(), "General");
    }
    layout.limits().all().forEach(limits -> line(limits, layout.system()));
    layout.limits().fixedWords().forEach((column, words) -> list(layout, column, words));
    sheet.createFreezePane(2, 1);
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    PageSetup.set(sheet, project, layout.system(), true, HEADINGS.length);
    return sheet;
  }

  private void constant(String words, String name, double value, String format) {
    words(1, words, CellStyleName.NAME);
    number(USUAL, value, format);
    name(name, row, row, USUAL);
    row++;
  }

  private void line(TypingLimits.Limits limits, UnitSystem system) {
    Column column = limits.column();
    words(0, limits.table().title(), CellStyleName.TABLE);
    words(1, column.name(), CellStyleName.NAME);
    boolean number = column.content() == Column.Content.NUMBER;
    words(2, number ? column.kind().unit(system).symbol() : "", CellStyleName.SMALL);
    String format = Styles.format(column, system);
    if (!Double.isNaN(limits.least())) {
      boolean taken = column.bounds().map(Bounds::lowIncluded).orElse(true);
      number(3, limits.least(), format);
      words(4, taken ? "yes" : "no", CellStyleName.TABLE);
      criterion(
          FROM,
          "IF(%s=\"yes\",\">=\",\">\")&%s".formatted(cell(4), cell(3)),
          (taken ? ">=" : ">") + SpreadsheetText.number(limits.least()));
      name(WorkbookNames.limit(limits.table(), column, "from"), row, row, FROM);
    }
    if (!Double.isNaN(limits.most())) {
      number(5, limits.most(), format);
      criterion(TO, "\"<=\"&" + cell(5), "<=" + SpreadsheetText.number(limits.most()));
      name(WorkbookNames.limit(limits.table(), column, "to"), row, row, TO);
    }
    Object usual = limits.usual().orElse(null);
    if (usual instanceof Double value) {
      number(USUAL, value, format);
    } else if (usual instanceof String word) {
      words(USUAL, word, CellStyleName.TABLE);
    }
    if (usual != null) {
      name(WorkbookNames.limit(limits.table(), column, "usual"), row, row, USUAL);
    }
    row++;
  }

  private void list(WorkbookLayout layout, Column column, List<String> words) {
    int first = row;
    words(0, layout.schema().table(column.reference().table()).title(), CellStyleName.TABLE);
    words(1, column.name(), CellStyleName.NAME);
    for (String word : words) {
      words(WORDS, word, CellStyleName.TABLE);
      row++;
    }
    name(
        WorkbookNames.limit(layout.schema().table(column.reference().table()), column, "words"),
        first,
        row - 1,
        WORDS);
  }

  private String cell(int column) {
    return new CellReference(row, column, false, false).formatAsString();
  }

  private XSSFCell at(int column) {
    XSSFRow present = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
    return present.createCell(column);
  }

  private void words(int column, String words, CellStyleName look) {
    XSSFCell cell = at(column);
    cell.setCellStyle(styles.of(look));
    if (!words.isEmpty()) {
      cell.setCellValue(CellText.encoded(words));
    }
  }

  private void number(int column, double value, String format) {
    XSSFCell cell = at(column);
    cell.setCellStyle(styles.of(CellStyleName.TABLE, format));
    cell.setCellValue(value);
  }

  private void criterion(int column, String formula, String result) {
    XSSFCell cell = at(column);
    cell.setCellStyle(styles.of(CellStyleName.SMALL));
    cell.setCellFormula(formula);
    cell.setCellValue(result);
  }

  private void name(String wanted, int first, int last, int column) {
    if (!named.add(wanted)) {
      throw new IllegalStateException("two limits are called " + wanted);
    }
    XSSFName name = workbook.getName(wanted);
    if (name == null) {
      name = workbook.createName();
      name.setNameName(wanted);
    }
    String from = new CellReference(first, column, true, true).formatAsString();
    String to = new CellReference(last, column, true, true).formatAsString();
    name.setRefersToFormula("'%s'!%s".formatted(TITLE, first == last ? from : from + ":" + to));
  }
}
