package zonewright.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.FormulaParseException;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaRenderer;
import org.apache.poi.ss.formula.FormulaShifter;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTRow;

/**
 * All that stands in a row of a sheet, with its formats, so that it can be laid down in another row
 * as a spreadsheet program does when it sorts: what a formula says of its own row holds on.
 */
final class RowImage {
  private record CellImage(int column, CTCell content, String formula) {}

  private final int row;
  private final CTRow attributes;
  private final List<CellImage> cells = new ArrayList<>();

  private RowImage(int row, CTRow source) {
    this.row = row;
    this.attributes = CTRow.Factory.newInstance();
    copy(source, attributes);
  }

  private static void copy(CTRow from, CTRow to) {
    if (from.isSetHt()) {
      to.setHt(from.getHt());
      to.setCustomHeight(from.getCustomHeight());
    } else if (to.isSetHt()) {
      to.unsetHt();
      to.setCustomHeight(false);
    }
    to.setHidden(from.getHidden());
    to.setOutlineLevel(from.getOutlineLevel());
    if (from.isSetS()) {
      to.setS(from.getS());
      to.setCustomFormat(from.getCustomFormat());
    } else if (to.isSetS()) {
      to.unsetS();
      to.setCustomFormat(false);
    }
  }

  /** Takes the image of a row; nothing in it where the sheet has no such row. */
  static RowImage of(XSSFSheet sheet, int at) {
    XSSFRow source = sheet.getRow(at);
    RowImage image =
        new RowImage(at, source == null ? CTRow.Factory.newInstance() : source.getCTRow());
    if (source != null) {
      for (Cell each : source) {
        XSSFCell cell = (XSSFCell) each;
        String formula = cell.getCellType() == CellType.FORMULA ? cell.getCellFormula() : null;
        image.cells.add(
            new CellImage(cell.getColumnIndex(), (CTCell) cell.getCTCell().copy(), formula));
      }
    }
    return image;
  }

  /** Returns the image without words and numbers, for a new row that is to look like its like. */
  RowImage formatsOnly(Set<Integer> formulasToo) {
    RowImage formats = new RowImage(row, attributes);
    for (CellImage cell : cells) {
      boolean filled = cell.formula() != null && formulasToo.contains(cell.column());
      CTCell content = CTCell.Factory.newInstance();
      if (cell.content().isSetS()) {
        content.setS(cell.content().getS());
      }
      formats.cells.add(new CellImage(cell.column(), content, filled ? cell.formula() : null));
    }
    return formats;
  }

  /** Lays the image down in a row, in place of all that stands there. */
  void lay(XSSFSheet sheet, int at) {
    XSSFRow target = sheet.getRow(at) == null ? sheet.createRow(at) : sheet.getRow(at);
    List<Cell> old = new ArrayList<>();
    target.forEach(old::add);
    old.forEach(target::removeCell);
    copy(attributes, target.getCTRow());
    for (CellImage image : cells) {
      XSSFCell cell = target.createCell(image.column());
      CTCell content = cell.getCTCell();
      content.set(image.content());
      content.setR(new CellReference(at, image.column()).formatAsString());
      if (image.formula() != null) {
        if (content.isSetF()) {
          content.unsetF();
        }
        cell.setCellFormula(moved(sheet, image.formula(), at - row));
      }
    }
  }

  private String moved(XSSFSheet sheet, String formula, int by) {
    // Headings of tables hold wherever the row stands, and the parser would make addresses of them.
    if (by == 0 || formula.indexOf('[') >= 0) {
      return formula;
    }
    int index = sheet.getWorkbook().getSheetIndex(sheet);
    XSSFEvaluationWorkbook names = XSSFEvaluationWorkbook.create(sheet.getWorkbook());
    FormulaShifter shifter =
        FormulaShifter.createForRowCopy(
            index, sheet.getSheetName(), row, row, by, SpreadsheetVersion.EXCEL2007);
    try {
      Ptg[] parts = FormulaParser.parse(formula, names, FormulaType.CELL, index, row);
      return shifter.adjustFormula(parts, index)
          ? FormulaRenderer.toFormulaString(names, parts)
          : formula;
    } catch (FormulaParseException | IllegalStateException newerThanTheParser) {
      return formula;
    }
  }
}
