package zonewright.workbook;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Enumeration;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.workbook.kit.Quiet;

/** Opens a workbook with care: right kind, whole, of bearable size; nothing in it is run. */
final class WorkbookOpening {
  /** No larger file is opened: 100 MB, more than 10,000 zones take. */
  static final long LARGEST_FILE = 100L << 20;

  /** No file is opened that unpacks to more: 2 GB. */
  private static final long LARGEST_UNPACKED = 2L << 30;

  /** No workbook of more cells is opened: thrice what 10,000 zones take, about 1 GB in memory. */
  static final long MOST_CELLS = 2_000_000;

  /** No workbook of more rows is opened. */
  static final long MOST_ROWS = 300_000;

  private static final byte[] ROW = "<row".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] CELL = "<c ".getBytes(StandardCharsets.US_ASCII);

  static {
    Quiet.please();
    // A column of like formulas packs a hundredfold and more, so the ratio tells nothing here; the
    // sizes do.
    ZipSecureFile.setMinInflateRatio(0);
    ZipSecureFile.setMaxEntrySize(LARGEST_UNPACKED);
  }

  /** Reads something from an open workbook. */
  interface Use<R> {
    R of(XSSFWorkbook workbook, boolean macros, byte[] content) throws DesignFileException;
  }

  private WorkbookOpening() {}

  /** Opens the file, hands it on, and closes it unchanged. */
  static <R> R with(Path path, Use<R> use) throws DesignFileException {
    boolean macros = look(path);
    OPCPackage opened = null;
    try {
      byte[] content = Files.readAllBytes(path);
      opened = OPCPackage.open(path.toFile(), PackageAccess.READ);
      return use.of(new XSSFWorkbook(opened), macros, content);
    } catch (OpenXML4JException | IOException | RuntimeException | StackOverflowError problem) {
      // A damaged part can fail in any way; whatever it is, the file is not read.
      String said = String.valueOf(problem.getMessage());
      throw new DesignFileException(
          said.contains("Strict")
              ? "%s was saved as Strict Open XML; save it again as an ordinary .xlsx workbook."
                  .formatted(path)
              : damaged(path),
          problem);
    } finally {
      if (opened != null) {
        opened.revert();
      }
    }
  }

  private static String damaged(Path path) {
    return "%s is damaged or was cut short; its last version may stand beside it as %s."
        .formatted(path, SafeSave.backup(path).getFileName());
  }

  /** Refuses what is no workbook of the newer kind; returns whether it holds macros. */
  private static boolean look(Path path) throws DesignFileException {
    if (!Files.exists(path)) {
      throw new DesignFileException("There is no file %s.".formatted(path));
    }
    if (!Files.isRegularFile(path)) {
      throw new DesignFileException("%s is a folder, not a file.".formatted(path));
    }
    try {
      long size = Files.size(path);
      if (size == 0) {
        throw new DesignFileException("%s is empty.".formatted(path));
      }
      if (size > LARGEST_FILE) {
        throw new DesignFileException(
            "%s has %s MB; designs up to %s MB are opened."
                .formatted(path, size >> 20, LARGEST_FILE >> 20));
      }
      File file = path.toFile();
      FileMagic magic = FileMagic.valueOf(file);
      if (magic == FileMagic.OLE2) {
        throw new DesignFileException(older(path));
      }
      if (magic != FileMagic.OOXML) {
        throw new DesignFileException("%s is not an .xlsx workbook.".formatted(path));
      }
      return parts(path, file);
    } catch (AccessDeniedException problem) {
      throw new DesignFileException(
          "%s may not be read; ask whoever owns it.".formatted(path), problem);
    } catch (IOException problem) {
      throw new DesignFileException(damaged(path), problem);
    }
  }

  /** Refuses a workbook of too many rows or cells, empty ones with a format among them. */
  private static void counted(Path path, ZipFile zip) throws IOException, DesignFileException {
    long rows = 0;
    long cells = 0;
    for (ZipEntry part : Collections.list(zip.entries())) {
      if (!part.getName().startsWith("xl/worksheets/") || part.getName().contains("_rels")) {
        continue;
      }
      try (InputStream stream = zip.getInputStream(part)) {
        byte[] block = new byte[1 << 16];
        long read = 0;
        for (int length; (length = stream.read(block)) >= 0; ) {
          read += length;
          rows += count(block, length, ROW);
          cells += count(block, length, CELL);
          if (read > LARGEST_UNPACKED || rows > MOST_ROWS || cells > MOST_CELLS) {
            throw new DesignFileException(
                "%s has more than %s rows or %s cells, empty ones with a format among them; delete what is not needed and save it again."
                    .formatted(path, MOST_ROWS, MOST_CELLS));
          }
        }
      }
    }
  }

  /** How often a word stands in a block; the few cut in two by its end do not matter. */
  private static long count(byte[] block, int length, byte[] word) {
    long count = 0;
    for (int i = 0; i + word.length <= length; i++) {
      int j = 0;
      while (j < word.length && block[i + j] == word[j]) {
        j++;
      }
      count += j == word.length ? 1 : 0;
    }
    return count;
  }

  private static String older(Path path) throws IOException {
    try (POIFSFileSystem files = new POIFSFileSystem(path.toFile(), true)) {
      if (files.getRoot().hasEntryCaseInsensitive("EncryptedPackage")) {
        return "%s is protected by a password; open it in a spreadsheet program and save it without one."
            .formatted(path);
      }
      return files.getRoot().hasEntryCaseInsensitive("Workbook")
              || files.getRoot().hasEntryCaseInsensitive("Book")
          ? "%s is a workbook of the older .xls kind; open it in a spreadsheet program and save it as .xlsx."
              .formatted(path)
          : "%s is not an .xlsx workbook.".formatted(path);
    }
  }

  private static boolean parts(Path path, File file) throws IOException, DesignFileException {
    try (ZipFile zip = new ZipFile(file)) {
      long unpacked = 0;
      boolean macros = false;
      for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
        ZipEntry part = all.nextElement();
        unpacked += Math.max(0, part.getSize());
        macros |= part.getName().endsWith("vbaProject.bin");
      }
      if (unpacked > LARGEST_UNPACKED) {
        throw new DesignFileException(
            "%s would unpack to %s MB, which no design does; it was not opened."
                .formatted(path, unpacked >> 20));
      }
      if (zip.getEntry("xl/workbook.bin") != null) {
        throw new DesignFileException(
            "%s is a binary workbook; open it in a spreadsheet program and save it as .xlsx."
                .formatted(path));
      }
      if (zip.getEntry("content.xml") != null && zip.getEntry("mimetype") != null) {
        throw new DesignFileException(
            "%s is an OpenDocument file; open it in a spreadsheet program and save it as .xlsx."
                .formatted(path));
      }
      if (zip.getEntry("[Content_Types].xml") == null || zip.getEntry("xl/workbook.xml") == null) {
        throw new DesignFileException("%s is not an .xlsx workbook.".formatted(path));
      }
      counted(path, zip);
      return macros;
    } catch (ZipException | IllegalArgumentException problem) {
      throw new DesignFileException(damaged(path), problem);
    }
  }
}
