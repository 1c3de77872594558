package zonewright.benchmark;

import java.io.BufferedOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.eventusermodel.XSSFSheetXMLHandler;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.xml.sax.InputSource;
import org.xml.sax.XMLReader;
import zonewright.design.Design;
import zonewright.sheet.Book;
import zonewright.sheet.Column;
import zonewright.sheet.Entry;
import zonewright.sheet.TableDefinition;
import zonewright.workbook.DesignFile;
import zonewright.workbook.kit.SheetColumn;
import zonewright.workbook.kit.WorkbookLayout;

/**
 * Measures how long a workbook of many zones takes to write and to open, beside the library doing
 * no more than write the same cells and pass over the same file, all in one run:
 *
 * <pre>mvn -q -Pbench test-compile exec:exec -Dbench.main=zonewright.benchmark.WorkbookBench</pre>
 *
 * <p>Prints seconds, their ratios, the size of the file and the most memory in use. Once round with
 * fewer zones goes before, so that nothing is measured cold.
 */
public final class WorkbookBench {
  private static final int ZONES = 10_000;
  private static final int WARMING = 500;
  private static final long LARGEST_PART = 0xFFFF_FFFFL;

  private WorkbookBench() {}

  /** A piece of work. */
  private interface Work {
    void run() throws Exception;
  }

  /** Runs all; a count of zones may be given. */
  public static void main(String[] arguments) throws Exception {
    int zones = arguments.length > 0 ? Integer.parseInt(arguments[0]) : ZONES;
    Path folder = Files.createTempDirectory("bench");
    ZipSecureFile.setMinInflateRatio(0);
    try {
      round(WARMING, folder, false);
      round(zones, folder, true);
    } finally {
      Files.deleteIfExists(folder.resolve("plain.xlsx"));
      Files.deleteIfExists(folder.resolve("many.bak.xlsx"));
      Files.deleteIfExists(folder.resolve("many.xlsx"));
      Files.deleteIfExists(folder);
    }
  }

  private static void round(int zones, Path folder, boolean told) throws Exception {
    Design design = ManyZones.design(zones);
    Path ours = folder.resolve("many.xlsx");
    Path plain = folder.resolve("plain.xlsx");
    double write = seconds(() -> DesignFile.write(design, ours));
    double plainWrite = seconds(() -> plainWrite(design.book(), plain));
    Files.delete(plain);
    double read = seconds(() -> DesignFile.read(ours));
    double plainRead = seconds(() -> plainRead(ours));
    if (told) {
      print("%,d zones, a file of %,d MB%n", zones, Files.size(ours) >> 20);
      print("Write %.1f s, plain %.1f s, ratio %.2f%n", write, plainWrite, write / plainWrite);
      print("Open %.1f s, plain %.1f s, ratio %.2f%n", read, plainRead, read / plainRead);
    }
  }

  private static double seconds(Work work) throws Exception {
    System.gc();
    long begun = System.nanoTime();
    work.run();
    return (System.nanoTime() - begun) / 1e9;
  }

  /** The cells of all long tables, as they come, with neither looks nor tables. */
  private static void plainWrite(Book book, Path file) throws Exception {
    WorkbookLayout layout = WorkbookLayout.of(book);
    try (SXSSFWorkbook workbook = new SXSSFWorkbook(100);
        OutputStream stream = new BufferedOutputStream(Files.newOutputStream(file))) {
      for (TableDefinition table : book.schema().tables()) {
        if (table.single()) {
          continue;
        }
        Sheet sheet = workbook.createSheet(table.title());
        for (int row = 0; row < book.rows(table.id()); row++) {
          Row target = sheet.createRow(row);
          for (SheetColumn column : layout.columns(table)) {
            plain(book, column, row, target.createCell(target.getPhysicalNumberOfCells()));
          }
        }
      }
      workbook.write(stream);
    }
  }

  private static void plain(Book book, SheetColumn column, int row, Cell cell) {
    column.formula().ifPresent(cell::setCellFormula);
    Column of = column.column().orElse(null);
    if (column.role() == SheetColumn.Role.TYPED) {
      Entry entry = book.entry(of.reference(), row);
      if (entry instanceof Entry.Figure figure) {
        cell.setCellValue(figure.value());
      } else if (entry instanceof Entry.Words words) {
        cell.setCellValue(words.text());
      }
    } else if (column.role() == SheetColumn.Role.VALUE) {
      double number = book.number(of.reference(), row);
      if (Double.isNaN(number)) {
        cell.setCellValue("no number");
      } else {
        cell.setCellValue(number);
      }
    }
  }

  /** Passes over all cells of all sheets. */
  private static void plainRead(Path file) throws Exception {
    // The program keeps the library from unpacking parts this large, and reads them by itself.
    ZipSecureFile.setMaxEntrySize(LARGEST_PART);
    try (OPCPackage parts = OPCPackage.open(file.toFile(), PackageAccess.READ)) {
      XSSFReader reader = new XSSFReader(parts);
      ReadOnlySharedStringsTable words = new ReadOnlySharedStringsTable(parts);
      XSSFReader.SheetIterator sheets = (XSSFReader.SheetIterator) reader.getSheetsData();
      while (sheets.hasNext()) {
        try (InputStream sheet = sheets.next()) {
          XMLReader parser = XMLHelper.newXMLReader();
          parser.setContentHandler(
              new XSSFSheetXMLHandler(reader.getStylesTable(), words, new Passing(), false));
          parser.parse(new InputSource(sheet));
        }
      }
    }
  }

  private static final class Passing implements XSSFSheetXMLHandler.SheetContentsHandler {
    @Override
    public void startRow(int row) {}

    @Override
    public void endRow(int row) {}

    @Override
    public void cell(String place, String shown, XSSFComment comment) {}
  }

  private static void print(String pattern, Object... values) {
    System.out.print(String.format(Locale.ROOT, pattern, values));
  }
}
