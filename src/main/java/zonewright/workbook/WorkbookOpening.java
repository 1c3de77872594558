package zonewright.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlException;
import org.xml.sax.SAXException;
import zonewright.workbook.kit.Quiet;

/** Opens a workbook with care: right kind, whole, of bearable size; nothing in it is run. */
final class WorkbookOpening {
  private static final String SHEETS = "xl/worksheets/";

  /** No larger file is opened: 400 MB, twice what 10,000 zones take. */
  static final long LARGEST_FILE = 400L << 20;

  /** No file is opened whose sheets unpack to more: 6 GB, twice what 10,000 zones take. */
  private static final long LARGEST_SHEETS = 6L << 30;

  /** No file is opened whose other parts unpack to more: 500 MB. */
  private static final long LARGEST_REST = 500L << 20;

  /** Larger sheets are read row by row, so that what is in memory is what was typed: 16 MB. */
  static final long LONG_SHEET = 16L << 20;

  /** A file is kept in memory for what is a person's own in it up to this size: 40 MB. */
  private static final long LARGEST_KEPT = 40L << 20;

  static {
    Quiet.please();
    // A column of like formulas packs a hundredfold and more, so the ratio tells nothing here; the
    // sizes do.
    ZipSecureFile.setMinInflateRatio(0);
    ZipSecureFile.setMaxEntrySize(LARGEST_REST);
  }

  /** Reads something from an open workbook. */
  interface Use<R> {
    R of(WorkbookSource source) throws DesignFileException;
  }

  /** What was seen of a file before it is opened. */
  private record Seen(boolean macros, long bytes, Map<String, byte[]> longSheets) {}

  /**
   * A workbook's file.
   *
   * @param plain what is in it, where a password protected it; else it is read from the disk
   */
  private record Archive(Path path, Optional<byte[]> plain) {
    ZipFile zip() throws IOException {
      SeekableByteChannel channel =
          plain.isPresent()
              ? new SeekableInMemoryByteChannel(plain.get())
              : Files.newByteChannel(path);
      try {
        return ZipFile.builder().setSeekableByteChannel(channel).get();
      } catch (IOException | RuntimeException problem) {
        channel.close();
        throw problem;
      }
    }

    long size() throws IOException {
      return plain.isPresent() ? plain.get().length : Files.size(path);
    }

    byte[] content() throws IOException {
      return plain.isPresent() ? plain.get() : Files.readAllBytes(path);
    }
  }

  private WorkbookOpening() {}

  /**
   * Opens the file, hands it on, and closes it unchanged.
   *
   * @throws Progress.BrokenOff where the watcher breaks it off
   */
  static <R> R with(Path path, Progress progress, Use<R> use) throws DesignFileException {
    return with(path, Optional.empty(), progress, use);
  }

  /** The same of a file that a password may protect. */
  static <R> R with(Path path, Optional<String> password, Progress progress, Use<R> use)
      throws DesignFileException {
    OPCPackage opened = null;
    try {
      Archive archive = look(path, password);
      Seen seen = parts(archive, progress);
      Optional<byte[]> content =
          archive.size() > LARGEST_KEPT ? Optional.empty() : Optional.of(archive.content());
      opened =
          seen.longSheets().isEmpty() && archive.plain().isEmpty()
              ? OPCPackage.open(path.toFile(), PackageAccess.READ)
              : OPCPackage.open(
                  new ByteArrayInputStream(
                      seen.longSheets().isEmpty()
                          ? archive.content()
                          : slim(archive, seen.longSheets())));
      XSSFWorkbook workbook = new XSSFWorkbook(opened);
      boolean since1904 = DateSystem.usual(workbook);
      if (seen.longSheets().isEmpty()) {
        progress.at(2 * seen.bytes() - 1, 2 * seen.bytes());
      }
      return use.of(
          new WorkbookSource(
              workbook,
              longSheets(archive, workbook, seen, since1904, progress),
              seen.macros(),
              since1904,
              content));
    } catch (Progress.BrokenOff end) {
      throw end;
    } catch (OutOfMemoryError problem) {
      throw noMemory(path, problem);
    } catch (OpenXML4JException | IOException | RuntimeException | StackOverflowError problem) {
      // A part that is not as it should be can fail in any way; whatever it is, the file is not
      // read.
      throw refused(path, problem);
    } finally {
      if (opened != null) {
        opened.revert();
      }
    }
  }

  /** The file without most rows of its long sheets. */
  private static byte[] slim(Archive archive, Map<String, byte[]> longSheets) throws IOException {
    ByteArrayOutputStream slim = new ByteArrayOutputStream();
    try (ZipFile zip = archive.zip();
        ZipOutputStream parts = new ZipOutputStream(slim)) {
      for (ZipArchiveEntry part : Collections.list(zip.getEntries())) {
        parts.putNextEntry(new ZipEntry(part.getName()));
        byte[] left = longSheets.get(part.getName());
        if (left != null) {
          parts.write(left);
        } else if (!part.getName().endsWith("vbaProject.bin")) {
          try (InputStream stream = zip.getInputStream(part)) {
            stream.transferTo(parts);
          }
        }
        parts.closeEntry();
      }
    }
    return slim.toByteArray();
  }

  private static Map<String, SheetCells> longSheets(
      Archive archive, XSSFWorkbook workbook, Seen seen, boolean since1904, Progress progress)
      throws IOException {
    Map<String, SheetCells> found = new HashMap<>();
    if (seen.longSheets().isEmpty()) {
      return found;
    }
    long[] bytes = {seen.bytes()};
    try (ZipFile zip = archive.zip()) {
      for (Sheet each : workbook) {
        XSSFSheet sheet = (XSSFSheet) each;
        String part = sheet.getPackagePart().getPartName().getName().substring(1);
        if (seen.longSheets().containsKey(part)) {
          try (InputStream stream = zip.getInputStream(zip.getEntry(part))) {
            LongSheet.Went went = more -> progress.at(bytes[0] += more, 2 * seen.bytes());
            found.put(
                sheet.getSheetName(), LongSheet.read(workbook, sheet, since1904, stream, went));
          }
        }
      }
    }
    return found;
  }

  private static DesignFileException noMemory(Path path, Throwable problem) {
    return new DesignFileException(
        "%s needs more memory than there is; close other windows and open it again."
            .formatted(path),
        problem);
  }

  /** Says why a file was not read: damage is called so only where it is. */
  private static DesignFileException refused(Path path, Throwable problem) {
    if (!readable(path)) {
      return new DesignFileException(unread(path), problem);
    }
    boolean torn = false;
    for (Throwable cause = problem; cause != null; cause = cause.getCause()) {
      if (cause instanceof OutOfMemoryError) {
        return noMemory(path, problem);
      }
      if (String.valueOf(cause.getMessage()).contains("Strict")) {
        return new DesignFileException(
            "%s was saved as Strict Open XML; save it again as an ordinary .xlsx workbook."
                .formatted(path),
            problem);
      }
      torn |=
          cause instanceof ZipException
              || cause instanceof EOFException
              || cause instanceof SAXException
              || cause instanceof XmlException
              || cause instanceof InvalidFormatException;
    }
    return new DesignFileException(
        torn
            ? damaged(path)
            : "%s is whole, but something in it is not as workbooks have it; open it in a spreadsheet program, save it again as .xlsx, and open that."
                .formatted(path),
        problem);
  }

  private static String damaged(Path path) {
    return "%s is damaged or was cut short; its last version may stand beside it as %s."
        .formatted(path, SafeSave.backup(path).getFileName());
  }

  /** Refuses what is no workbook of the newer kind; opens what a password protects. */
  private static Archive look(Path path, Optional<String> password) throws DesignFileException {
    if (!Files.exists(path)) {
      throw new DesignFileException("There is no file %s.".formatted(path));
    }
    if (!Files.isRegularFile(path)) {
      throw new DesignFileException(
          (Files.isDirectory(path) ? "%s is a folder, not a file." : "%s is no ordinary file.")
              .formatted(path));
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
        return new Archive(path, Optional.of(older(path, password)));
      }
      if (magic != FileMagic.OOXML) {
        throw new DesignFileException("%s is not an .xlsx workbook.".formatted(path));
      }
      return new Archive(path, Optional.empty());
    } catch (AccessDeniedException problem) {
      throw new DesignFileException(
          "%s may not be read; ask whoever owns it.".formatted(path), problem);
    } catch (IOException | RuntimeException problem) {
      throw refused(path, problem);
    }
  }

  /** Refuses a workbook of too many rows or cells, empty ones with a format among them. */
  private static Map<String, byte[]> counted(Path path, ZipFile zip, long all, Progress progress)
      throws IOException, DesignFileException {
    Map<String, byte[]> longSheets = new HashMap<>();
    long rows = 0;
    long cells = 0;
    long bytes = 0;
    for (ZipArchiveEntry part : Collections.list(zip.getEntries())) {
      if (!part.getName().startsWith(SHEETS) || part.getName().contains("_rels")) {
        checked(zip, part, stream -> {});
        continue;
      }
      long rowsBefore = rows;
      long cellsBefore = cells;
      long before = bytes;
      SheetScan scan = new SheetScan(part.getSize() > LONG_SHEET);
      checked(
          zip,
          part,
          stream ->
              scan.through(
                  stream,
                  now -> {
                    if (before + now.bytes() > LARGEST_SHEETS
                        || rowsBefore + now.rows() > FileSize.MOST_ROWS
                        || cellsBefore + now.cells() > FileSize.MOST_CELLS) {
                      throw new DesignFileException(
                          "%s has more than %s rows or %s cells, empty ones with a format among them; delete what is not needed and save it again."
                              .formatted(path, FileSize.MOST_ROWS, FileSize.MOST_CELLS));
                    }
                    progress.at(Math.min(all, before + now.bytes()), 2 * all);
                  }));
      rows += scan.rows();
      cells += scan.cells();
      bytes += scan.bytes();
      if (part.getSize() > LONG_SHEET) {
        longSheets.put(part.getName(), scan.left());
      }
    }
    return longSheets;
  }

  /** Reads a part. */
  private interface Reading {
    void of(InputStream stream) throws IOException, DesignFileException;
  }

  /** Reads a part of a file and makes sure that it is as it was written. */
  private static void checked(ZipFile zip, ZipArchiveEntry part, Reading reading)
      throws IOException, DesignFileException {
    CRC32 sum = new CRC32();
    try (InputStream stream = new CheckedInputStream(zip.getInputStream(part), sum)) {
      reading.of(stream);
      stream.transferTo(OutputStream.nullOutputStream());
    }
    if (part.getCrc() >= 0 && part.getCrc() != sum.getValue()) {
      throw new ZipException(part.getName() + " is not as it was written");
    }
  }

  /**
   * Makes sure that a file just written is one that is opened again.
   *
   * @throws DesignFileException where it is too large for that
   */
  static void again(Path written, Path file, Optional<String> password) throws DesignFileException {
    try {
      parts(look(written, password), Progress.UNWATCHED);
    } catch (DesignFileException | IOException problem) {
      throw new DesignFileException(
          "%s was not saved: a design of this size would not be opened again (no more than %s rows and %s cells are); divide it into several."
              .formatted(file, FileSize.MOST_ROWS, FileSize.MOST_CELLS),
          problem);
    }
  }

  /** Returns what a file of the older kind holds that is a protected one of the newer. */
  private static byte[] older(Path path, Optional<String> password)
      throws IOException, DesignFileException {
    try (POIFSFileSystem files = new POIFSFileSystem(path.toFile(), true)) {
      if (files.getRoot().hasEntryCaseInsensitive("EncryptedPackage")) {
        return PasswordProtection.opened(path, files, password);
      }
      throw new DesignFileException(
          files.getRoot().hasEntryCaseInsensitive("Workbook")
                  || files.getRoot().hasEntryCaseInsensitive("Book")
              ? "%s is a workbook of the older .xls kind; open it in a spreadsheet program and save it as .xlsx."
                  .formatted(path)
              : "%s is not an .xlsx workbook.".formatted(path));
    }
  }

  private static Seen parts(Archive archive, Progress progress)
      throws IOException, DesignFileException {
    Path path = archive.path();
    try (ZipFile zip = archive.zip()) {
      long sheets = 1;
      long rest = 0;
      boolean macros = false;
      for (ZipArchiveEntry part : Collections.list(zip.getEntries())) {
        if (part.getName().startsWith(SHEETS)) {
          sheets += Math.max(0, part.getSize());
        } else {
          rest += Math.max(0, part.getSize());
        }
        macros |= part.getName().endsWith("vbaProject.bin");
      }
      if (sheets > LARGEST_SHEETS || rest > LARGEST_REST) {
        throw new DesignFileException(
            "%s would unpack to %s MB, which no design does; it was not opened."
                .formatted(path, (sheets + rest) >> 20));
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
      return new Seen(macros, sheets, counted(path, zip, sheets, progress));
    } catch (Progress.BrokenOff end) {
      throw end;
    } catch (IOException | RuntimeException problem) {
      // what cannot be unpacked, or has another check sum, is not as it was written
      throw new DesignFileException(readable(path) ? damaged(path) : unread(path), problem);
    }
  }

  /** Says whether a disk gives all of a file, whatever is in it. */
  private static boolean readable(Path path) {
    try (InputStream stream = Files.newInputStream(path)) {
      stream.transferTo(OutputStream.nullOutputStream());
      return true;
    } catch (IOException gone) {
      return false;
    }
  }

  private static String unread(Path path) {
    return "%s could not be read from its disk; see whether the disk or the network is there."
        .formatted(path);
  }
}
