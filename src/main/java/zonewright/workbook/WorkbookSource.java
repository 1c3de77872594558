package zonewright.workbook;

import java.util.Map;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook that is open for reading.
 *
 * @param workbook the workbook; of long sheets it holds the first rows only
 * @param longSheets the cells of long sheets, by the sheet's name
 * @param macros whether the file holds macros
 * @param since1904 whether the file counts its dates from 1904; the workbook does not any more
 * @param content the file as it is; none where it is too large to be kept in memory
 */
record WorkbookSource(
    XSSFWorkbook workbook,
    Map<String, SheetCells> longSheets,
    boolean macros,
    boolean since1904,
    Optional<byte[]> content) {

  /** Returns a workbook that is held as a whole. */
  static WorkbookSource whole(XSSFWorkbook workbook) {
    return new WorkbookSource(workbook, Map.of(), false, false, Optional.empty());
  }

  /** Returns the cells of a sheet. */
  SheetCells cells(XSSFSheet sheet) {
    SheetCells streamed = longSheets.get(sheet.getSheetName());
    return streamed == null ? SheetCells.of(sheet) : streamed;
  }
}
