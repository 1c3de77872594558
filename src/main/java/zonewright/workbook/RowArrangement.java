package zonewright.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDataValidation;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableColumn;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableFormula;

/**
 * Brings the rows of a table on a sheet into another order, with rows added or gone: everything in
 * a row goes with it, and what stands below the table keeps its distance.
 */
final class RowArrangement {
  /** Where comments wait while rows move; no table reaches so far down. */
  private static final int ASIDE = 900_000;

  private final XSSFSheet sheet;
  private final int first;
  private final int before;
  private final Set<Integer> ownFormulas;

  /**
   * Prepares for one table.
   *
   * @param first the first row of the table below its headings
   * @param before how many rows it has now
   * @param ownFormulas columns whose formula a new row takes over from the last
   */
  RowArrangement(XSSFSheet sheet, int first, int before, Set<Integer> ownFormulas) {
    this.sheet = sheet;
    this.first = first;
    this.before = before;
    this.ownFormulas = ownFormulas;
  }

  /**
   * Brings the rows into the order of {@code sources}.
   *
   * @param sources for each row to be, the row of the sheet it stands in now; -1 for a new row
   */
  void to(List<Integer> sources) {
    Map<Integer, RowImage> images = new HashMap<>();
    for (int row = first; row < first + before; row++) {
      images.put(row, RowImage.of(sheet, row));
    }
    RowImage blank = images.get(first + before - 1).formatsOnly(ownFormulas);
    Map<Integer, List<XSSFComment>> comments = commentsAside(sources);
    Map<Integer, List<XSSFHyperlink>> links = linksAside(sources);
    int after = Math.max(1, sources.size());
    if (after != before) {
      shiftBelow(after - before);
    }
    if (sources.isEmpty()) {
      blank.lay(sheet, first);
    }
    for (int i = 0; i < sources.size(); i++) {
      int source = sources.get(i);
      int target = first + i;
      images.getOrDefault(source, blank).lay(sheet, target);
      comments
          .getOrDefault(source, List.of())
          .forEach(
              comment ->
                  comment.setAddress(new CellAddress(target, comment.getAddress().getColumn())));
      links
          .getOrDefault(source, List.of())
          .forEach(
              link -> {
                link.setCellReference(
                    new CellAddress(target, link.getFirstColumn()).formatAsString());
                sheet.addHyperlink(link);
              });
    }
  }

  private boolean ofTable(int row) {
    return row >= first && row < first + before;
  }

  private Map<Integer, List<XSSFComment>> commentsAside(List<Integer> sources) {
    Map<Integer, List<XSSFComment>> comments = new HashMap<>();
    for (Map.Entry<CellAddress, XSSFComment> each : sheet.getCellComments().entrySet()) {
      CellAddress place = each.getKey();
      if (!ofTable(place.getRow())) {
        continue;
      }
      if (sources.contains(place.getRow())) {
        comments.computeIfAbsent(place.getRow(), any -> new ArrayList<>()).add(each.getValue());
        each.getValue().setAddress(new CellAddress(ASIDE + place.getRow(), place.getColumn()));
      } else {
        Row row = sheet.getRow(place.getRow());
        Cell cell = row == null ? null : row.getCell(place.getColumn());
        (cell == null ? sheet.createRow(place.getRow()).createCell(place.getColumn()) : cell)
            .removeCellComment();
      }
    }
    return comments;
  }

  private Map<Integer, List<XSSFHyperlink>> linksAside(List<Integer> sources) {
    Map<Integer, List<XSSFHyperlink>> links = new HashMap<>();
    for (XSSFHyperlink link : List.copyOf(sheet.getHyperlinkList())) {
      if (ofTable(link.getFirstRow()) && link.getFirstRow() == link.getLastRow()) {
        sheet.removeHyperlink(link);
        if (sources.contains(link.getFirstRow())) {
          links.computeIfAbsent(link.getFirstRow(), any -> new ArrayList<>()).add(link);
        }
      }
    }
    return links;
  }

  /**
   * Moves the last row of the table, and all below it, so that ranges over the whole table grow or
   * shrink with it.
   */
  private void shiftBelow(int by) {
    int from = first + before - 1;
    Map<XSSFCell, String> structured = new HashMap<>();
    Map<XSSFName, String> names = new HashMap<>();
    setAside(structured, names);
    for (int row = from + Math.min(0, by); row < from; row++) {
      if (sheet.getRow(row) != null) {
        sheet.removeRow(sheet.getRow(row));
      }
    }
    Map<CTTableColumn, CTTableFormula> calculated = calculatedAside();
    sheet.shiftRows(from, Math.max(from, sheet.getLastRowNum()), by, true, false);
    calculated.forEach(CTTableColumn::setCalculatedColumnFormula);
    structured.forEach(XSSFCell::setCellFormula);
    names.forEach(XSSFName::setRefersToFormula);
    if (sheet.getCTWorksheet().isSetDataValidations()) {
      for (CTDataValidation validation :
          sheet.getCTWorksheet().getDataValidations().getDataValidationList()) {
        List<String> ranges = new ArrayList<>();
        Validations.ranges(validation).forEach(range -> ranges.add(shifted(range, from, by)));
        validation.setSqref(ranges);
      }
    }
  }

  /** The library would fill the columns of the table anew wherever they say how. */
  private Map<CTTableColumn, CTTableFormula> calculatedAside() {
    Map<CTTableColumn, CTTableFormula> calculated = new HashMap<>();
    for (XSSFTable table : sheet.getTables()) {
      for (CTTableColumn column : table.getCTTable().getTableColumns().getTableColumnList()) {
        if (column.isSetCalculatedColumnFormula()) {
          calculated.put(column, (CTTableFormula) column.getCalculatedColumnFormula().copy());
          column.unsetCalculatedColumnFormula();
        }
      }
    }
    return calculated;
  }

  private static String shifted(CellRangeAddress range, int from, int by) {
    int top = range.getFirstRow() >= from ? range.getFirstRow() + by : range.getFirstRow();
    int bottom = range.getLastRow() >= from ? range.getLastRow() + by : range.getLastRow();
    return new CellRangeAddress(
            Math.min(top, bottom),
            Math.max(top, bottom),
            range.getFirstColumn(),
            range.getLastColumn())
        .formatAsString();
  }

  /** The library would make addresses of what refers to a table by its headings. */
  private void setAside(Map<XSSFCell, String> structured, Map<XSSFName, String> names) {
    for (int i = 0; i < sheet.getWorkbook().getNumberOfSheets(); i++) {
      for (Row row : sheet.getWorkbook().getSheetAt(i)) {
        for (Cell each : row) {
          if (each.getCellType() == CellType.FORMULA && each.getCellFormula().indexOf('[') >= 0) {
            XSSFCell cell = (XSSFCell) each;
            // Rows of the table are laid down anew anyhow.
            if (!cell.getSheet().equals(sheet) || !ofTable(row.getRowNum())) {
              structured.put(cell, cell.getCellFormula());
            }
            cell.getCTCell().unsetF();
          }
        }
      }
    }
    for (XSSFName name : sheet.getWorkbook().getAllNames()) {
      String formula = name.getRefersToFormula();
      if (formula != null && formula.indexOf('[') >= 0) {
        names.put(name, formula);
        name.setRefersToFormula("0");
      }
    }
  }
}
