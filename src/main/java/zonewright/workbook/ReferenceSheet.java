package zonewright.workbook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.formula.ReferenceTable;
import zonewright.units.QuantityKind;
import zonewright.units.Unit;
import zonewright.units.UnitSystem;
import zonewright.units.Units;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.kit.ExcelTable;
import zonewright.workbook.kit.Look;
import zonewright.workbook.kit.Paper;
import zonewright.workbook.kit.Styles;

/**
 * A table of the trade as a sheet: what the design's formulas look up, each row with its source.
 */
final class ReferenceSheet {
  private static final int TEXT_WIDTH = 46;
  private static final int SOURCE_WIDTH = 70;
  private static final int SOURCE_LETTERS_A_LINE = 86;
  private static final int NUMBER_WIDTH = 12;
  private static final String NONE = "not given";

  private final XSSFWorkbook workbook;
  private final Styles styles;
  private final UnitSystem system;
  private final Map<String, ReferenceTable.Numbers> used = new HashMap<>();

  /**
   * Prepares for one workbook.
   *
   * @param used the columns that formulas look numbers up in
   */
  ReferenceSheet(
      XSSFWorkbook workbook,
      Styles styles,
      UnitSystem system,
      Iterable<ReferenceTable.Numbers> used) {
    this.workbook = workbook;
    this.styles = styles;
    this.system = system;
    used.forEach(
        column -> this.used.put(column.table().name() + "/" + column.sourceHeading(), column));
  }

  /** Writes the table into a new sheet. */
  XSSFSheet write(ReferenceTable table, int number, String project) {
    XSSFSheet sheet = workbook.createSheet(table.name());
    List<String> headings = table.headings();
    XSSFRow top = sheet.createRow(0);
    top.setHeightInPoints(42);
    for (int row = 0; row < table.size(); row++) {
      sheet.createRow(row + 1);
    }
    for (int position = 0; position < headings.size(); position++) {
      String heading = headings.get(position);
      Optional<ReferenceTable.Numbers> numbers = numbers(table, heading);
      XSSFCell cell = top.createCell(position);
      cell.setCellStyle(styles.of(Look.HEADING));
      cell.setCellValue(numbers.map(column -> column.heading(system)).orElse(heading));
      boolean source = heading.equals("Source") || heading.equals("Status");
      int width =
          numbers.isPresent() ? NUMBER_WIDTH : source ? SOURCE_WIDTH : width(table, heading);
      sheet.setColumnWidth(position, width * 256);
      for (int row = 0; row < table.size(); row++) {
        cell(sheet.getRow(row + 1), position, table.text(row, heading), row, numbers, source);
      }
    }
    for (int row = 0; row < table.size(); row++) {
      int longest =
          Math.max(table.text(row, "Source").length(), table.text(row, "Status").length());
      int lines = 1 + longest / SOURCE_LETTERS_A_LINE;
      sheet.getRow(row + 1).setHeightInPoints(Math.max(15, lines * 11.5f + 4));
    }
    ExcelTable.make(sheet, table.name(), number, 0, table.size(), headings.size());
    sheet.createFreezePane(1, 1);
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    Paper.set(sheet, project, system, true, 1);
    return sheet;
  }

  private static int width(ReferenceTable table, String heading) {
    int width = heading.length() + 4;
    for (int row = 0; row < table.size(); row++) {
      width = Math.max(width, table.text(row, heading).length() + 4);
    }
    return Math.min(TEXT_WIDTH, width);
  }

  private void cell(
      XSSFRow row,
      int position,
      String text,
      int at,
      Optional<ReferenceTable.Numbers> numbers,
      boolean source) {
    XSSFCell cell = row.createCell(position);
    Look look = source ? Look.SMALL : position == 0 ? Look.NAME : Look.TABLE;
    if (numbers.isPresent() && !text.isBlank()) {
      ReferenceTable.Numbers column = numbers.get();
      cell.setCellStyle(styles.of(look, format(column, text)));
      cell.setCellValue(column.value(at, system));
      return;
    }
    cell.setCellStyle(styles.of(look));
    cell.setCellValue(numbers.isPresent() ? NONE : CellText.encoded(text));
  }

  /** As many decimals as published, and those of the other system where converted. */
  private String format(ReferenceTable.Numbers column, String text) {
    QuantityKind kind = column.kind();
    boolean own = column.heading(system).equals(column.sourceHeading());
    int written = text.indexOf('.') < 0 ? 0 : text.length() - text.indexOf('.') - 1;
    int decimals = kind.percent() ? Math.max(0, written - 2) : written;
    return Styles.format(kind, own ? decimals : Math.max(kind.decimals(system), 1));
  }

  private Optional<ReferenceTable.Numbers> numbers(ReferenceTable table, String heading) {
    ReferenceTable.Numbers known = used.get(table.name() + "/" + heading);
    if (known != null) {
      return Optional.of(known);
    }
    boolean any = false;
    for (int row = 0; row < table.size(); row++) {
      String text = table.text(row, heading);
      if (!text.isBlank() && !text.matches("-?\\d+(\\.\\d+)?")) {
        return Optional.empty();
      }
      any |= !text.isBlank();
    }
    return any ? kind(heading).map(kind -> table.numbers(heading, kind)) : Optional.empty();
  }

  /** The kind whose unit a heading names, for columns that no formula looks at. */
  private static Optional<QuantityKind> kind(String heading) {
    if (!heading.endsWith(")")) {
      return Optional.of(QuantityKind.FACTOR);
    }
    String words = heading.substring(heading.lastIndexOf('(') + 1, heading.length() - 1);
    Unit unit = Units.named(words).orElse(null);
    for (QuantityKind kind : QuantityKind.values()) {
      if (kind.unit(UnitSystem.US).equals(unit) || kind.unit(UnitSystem.SI).equals(unit)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
