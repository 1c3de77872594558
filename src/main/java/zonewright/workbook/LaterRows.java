package zonewright.workbook;

import java.io.BufferedWriter;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.sheet.Book;
import zonewright.sheet.TableDefinition;
import zonewright.workbook.kit.SheetColumn;

/**
 * Rows of long tables, which are written straight into the file after all else is made.
 *
 * <p>Held in memory as cells they would take gigabytes, and the library's own streaming writes them
 * twice. Everything that depends on a table's place (names, validations, looks) is made without its
 * rows; here they go into the sheet's part of the file while that is packed.
 */
final class LaterRows {
  private static final String END = "</sheetData>";
  private static final String NONE = "<sheetData/>";

  /** Rows of one sheet. */
  private record Block(XSSFSheet sheet, int width, int rows, RowText text) {}

  private final List<Block> blocks = new ArrayList<>();
  private final int longerThan;

  /**
   * Prepares for one workbook.
   *
   * @param longerThan how many rows a table has before its rows wait
   */
  LaterRows(int longerThan) {
    this.longerThan = longerThan;
  }

  /** Says whether a table of so many rows waits. */
  boolean waits(int rows) {
    return rows > longerThan;
  }

  /** Takes note of the rows of a table that are to follow the headings of its sheet. */
  void add(
      XSSFSheet sheet,
      TableDefinition table,
      List<SheetColumn> columns,
      Book book,
      CellWriter cells) {
    blocks.add(
        new Block(
            sheet,
            columns.size(),
            book.rows(table.id()),
            new RowText(table, columns, book, cells)));
  }

  /** Writes the workbook with all rows. */
  void write(XSSFWorkbook workbook, OutputStream target, Progress progress) throws IOException {
    if (blocks.isEmpty()) {
      workbook.write(target);
      return;
    }
    ByteArrayOutputStream frame = new ByteArrayOutputStream();
    workbook.write(frame);
    long all = blocks.stream().mapToLong(block -> (long) block.rows * block.width).sum();
    long done = 0;
    // Closing the stream of a file is for whoever opened it.
    ZipOutputStream zip = new ZipOutputStream(target);
    try (ZipInputStream parts = new ZipInputStream(new ByteArrayInputStream(frame.toByteArray()))) {
      for (ZipEntry part; (part = parts.getNextEntry()) != null; ) {
        zip.putNextEntry(new ZipEntry(part.getName()));
        Block block = of(part.getName());
        if (block == null) {
          parts.transferTo(zip);
        } else {
          done = rows(block, parts, zip, progress, done, all);
        }
        zip.closeEntry();
      }
    }
    zip.finish();
  }

  private Block of(String part) {
    return blocks.stream()
        .filter(block -> block.sheet.getPackagePart().getPartName().getName().equals("/" + part))
        .findFirst()
        .orElse(null);
  }

  private long rows(
      Block block, InputStream part, OutputStream zip, Progress progress, long before, long all)
      throws IOException {
    String xml = new String(part.readAllBytes(), StandardCharsets.UTF_8);
    String corner = CellReference.convertNumToColString(block.width - 1);
    xml =
        xml.replaceFirst(
            "<dimension ref=\"[^\"]*\"/>",
            "<dimension ref=\"A1:%s%s\"/>".formatted(corner, TableSheet.FIRST_ROW + block.rows));
    int end = xml.indexOf(END);
    if (end < 0 || xml.contains(NONE)) {
      throw new IOException("a sheet without headings");
    }
    long done = before;
    Writer out = new BufferedWriter(new OutputStreamWriter(zip, StandardCharsets.UTF_8), 1 << 16);
    out.write(xml, 0, end);
    for (int row = 0; row < block.rows; row++) {
      block.text.write(row, out);
      done += block.width;
      progress.at(done, all);
    }
    out.write(xml, end, xml.length() - end);
    out.flush();
    return done;
  }
}
