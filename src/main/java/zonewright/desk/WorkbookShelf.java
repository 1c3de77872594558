package zonewright.desk;

import java.nio.file.Path;
import java.util.List;
import zonewright.design.Design;
import zonewright.workbook.DesignFile;
import zonewright.workbook.DesignFileException;
import zonewright.workbook.ReadingReport;
import zonewright.workbook.pack.PackSheet;

/** Keeps designs as workbooks. */
final class WorkbookShelf implements Shelf {
  @Override
  public void put(Design design, Path file) throws Refused {
    try {
      DesignFile.write(design, file);
    } catch (DesignFileException problem) {
      throw new Refused(problem.getMessage(), problem);
    }
  }

  @Override
  public void handOver(Design design, Path file, List<PackSheet> sheets) throws Refused {
    try {
      DesignFile.write(design, file, sheets);
    } catch (DesignFileException problem) {
      throw new Refused(problem.getMessage(), problem);
    }
  }

  @Override
  public Taken take(Path file) throws Refused {
    try {
      DesignFile.Opened opened = DesignFile.read(file);
      return new Taken(
          opened.design(), opened.report().notes().stream().map(ReadingReport.Note::line).toList());
    } catch (DesignFileException problem) {
      throw new Refused(problem.getMessage(), problem);
    }
  }
}
