package zonewright.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import zonewright.design.Design;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Row;
import zonewright.sheet.TableDefinition;
import zonewright.workbook.kit.CellText;
import zonewright.workbook.kit.Quiet;
import zonewright.workbook.pack.PackOrder;

/** Writes a design into a copy of the file it came from, or into a new one. */
final class DesignWriting {
  private static final Logger LOG = Logger.getLogger(DesignWriting.class.getName());

  private static final String MADE_ANEW =
      "Sheets and columns of your own could not be carried over into the new file; they are in the last version, which stands"
          + " beside it.";

  private static final String TOO_LARGE =
      "A design of this size is written anew as a whole: sheets, columns and formats of your own are in the last version, which"
          + " stands beside it.";

  /** In a design of more cells a person's own is not kept: about 1,300 zones, 2 GB of memory. */
  static final long MOST_CELLS_IN_PLACE = 400_000;

  /** Longer tables are written row by row. */
  static final int LONG_TABLE = 200;

  static {
    Quiet.please();
  }

  private DesignWriting() {}

  static DesignFile.Written write(
      Design design, Path file, PackOrder order, Optional<KeptFile> kept, Progress progress)
      throws IOException, DesignFileException {
    Optional<String> password = kept.flatMap(KeptFile::password);
    boolean bearable = cells(design) <= MOST_CELLS_IN_PLACE;
    if (bearable && !order.client() && kept.isPresent() && kept.get().content().isPresent()) {
      Optional<KeptFile> made = inPlace(design, kept.get(), order);
      if (made.isPresent()) {
        byte[] content = made.get().content().orElseThrow();
        SafeSave.replace(
            file,
            PasswordProtection.closed(password, stream -> stream.write(content)),
            part -> progress.replacing());
        return new DesignFile.Written(made.get().closedBy(password), List.of());
      }
    }
    Map<String, Map<Long, Integer>> rows = new HashMap<>();
    for (TableDefinition table : design.book().schema().tables()) {
      rows.put(table.id(), KeptRows.fresh(design.book(), table));
    }
    Optional<byte[]> content = Optional.empty();
    Set<String> titles;
    LaterRows later = new LaterRows(LONG_TABLE);
    try (XSSFWorkbook workbook = DesignWorkbook.of(design, order, later)) {
      titles = MadeSheets.in(workbook);
      if (bearable) {
        ByteArrayOutputStream made = new ByteArrayOutputStream();
        later.write(workbook, made, progress);
        SafeSave.replace(
            file, PasswordProtection.closed(password, made::writeTo), part -> progress.replacing());
        content = Optional.of(made.toByteArray());
      } else {
        SafeSave.replace(
            file,
            PasswordProtection.closed(password, stream -> later.write(workbook, stream, progress)),
            part -> {
              if (FileSize.cells(design.book()) > FileSize.MOST_CELLS * 2 / 3) {
                WorkbookOpening.again(part, file, password);
              }
              progress.replacing();
            });
      }
    }
    boolean told = kept.isPresent() && kept.get().foreign();
    return new DesignFile.Written(
        new KeptFile(content, design.book().system(), rows, titles, false).closedBy(password),
        told ? List.of(bearable ? MADE_ANEW : TOO_LARGE) : List.of());
  }

  private static long cells(Design design) {
    return design.book().schema().tables().stream()
        .mapToLong(table -> (long) design.book().rows(table.id()) * table.columns().size())
        .sum();
  }

  /** Returns the copy, read back and found to hold the design; nothing where that fails. */
  private static Optional<KeptFile> inPlace(Design design, KeptFile kept, PackOrder order) {
    ByteArrayOutputStream content = new ByteArrayOutputStream();
    Map<String, Map<Long, Integer>> rows;
    Set<String> titles;
    try {
      InPlace.Made made = InPlace.of(design, kept, order);
      try (XSSFWorkbook workbook = made.workbook()) {
        titles = MadeSheets.in(workbook);
        workbook.write(content);
        rows = made.rows();
      }
      try (XSSFWorkbook again = new XSSFWorkbook(new ByteArrayInputStream(content.toByteArray()))) {
        Design back = DesignReader.read(WorkbookSource.whole(again), "the copy").design();
        if (!same(design.book().snapshot(), back.book().snapshot())) {
          LOG.warning("the copy of a person's own file does not hold the design; it is made anew");
          return Optional.empty();
        }
      }
      Optional<byte[]> copy = Optional.of(content.toByteArray());
      return Optional.of(new KeptFile(copy, design.book().system(), rows, titles, true));
    } catch (CellText.TooLong sentence) {
      throw sentence;
    } catch (IOException | DesignFileException | RuntimeException | OutOfMemoryError problem) {
      // Whatever a person's own file holds that the library cannot write: the design comes first.
      LOG.log(Level.WARNING, "the copy of a person's own file could not be made", problem);
      return Optional.empty();
    }
  }

  private static boolean same(BookSnapshot one, BookSnapshot other) {
    if (one.system() != other.system() || !one.tables().keySet().equals(other.tables().keySet())) {
      return false;
    }
    for (String table : one.tables().keySet()) {
      List<Row> rows = one.rows(table);
      List<Row> others = other.rows(table);
      if (rows.size() != others.size()) {
        return false;
      }
      for (int i = 0; i < rows.size(); i++) {
        if (!rows.get(i).sameEntries(others.get(i))) {
          return false;
        }
      }
    }
    return true;
  }
}
