package zonewright.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.units.UnitSystem;

/** The workbook of the demo, changed by another program and read again. */
abstract class ChangedGarden {
  @TempDir Path folder;
  Path file;
  Design design;

  /** Something done to the workbook. */
  interface Change {
    void to(XSSFWorkbook workbook) throws IOException;
  }

  @BeforeEach
  void writeTheDemo() {
    file = WrittenOnce.demo(folder);
    design = Designs.demo(UnitSystem.US);
  }

  final DesignFile.Opened after(Change change) throws DesignFileException, IOException {
    Path changed = folder.resolve("changed.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
      change.to(workbook);
      try (OutputStream stream = Files.newOutputStream(changed)) {
        workbook.write(stream);
      }
    }
    return DesignFile.read(changed);
  }

  final XSSFCell zone(XSSFWorkbook workbook, Column column, int row) {
    XSSFSheet zones = workbook.getSheet("Zones");
    int position = Headings.typed(zones, column);
    XSSFRow cells = zones.getRow(TableSheet.FIRST_ROW + row);
    XSSFCell cell = cells.getCell(position);
    return cell == null ? cells.createCell(position) : cell;
  }

  static Entry entry(DesignFile.Opened opened, Column column, int row) {
    return opened.design().book().entry(column.reference(), row);
  }
}
