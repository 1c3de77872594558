package zonewright.desk.file;

import java.nio.file.Path;
import java.util.Optional;
import zonewright.design.Design;
import zonewright.desk.task.Refused;
import zonewright.workbook.DesignFile;
import zonewright.workbook.DesignFileException;
import zonewright.workbook.KeptFile;
import zonewright.workbook.Progress;
import zonewright.workbook.ReadingReport;
import zonewright.workbook.pack.PackOrder;

/** Keeps designs as workbooks. */
public final class WorkbookShelf implements Shelf {
  @Override
  public DesignFile.Written put(
      Design design, Path file, Optional<KeptFile> kept, Progress progress) throws Refused {
    try {
      return DesignFile.save(design, file, kept, progress);
    } catch (DesignFileException problem) {
      throw new Refused(problem.getMessage(), problem);
    }
  }

  @Override
  public DesignFile.Written handOver(
      Design design, Path file, PackOrder order, Optional<KeptFile> kept, Progress progress)
      throws Refused {
    try {
      return DesignFile.write(design, file, order, kept, progress);
    } catch (DesignFileException problem) {
      throw new Refused(problem.getMessage(), problem);
    }
  }

  @Override
  public Taken take(Path file, Optional<String> password, Progress progress) throws Refused {
    try {
      DesignFile.Opened opened = DesignFile.read(file, password, progress);
      return new Taken(
          opened.design(),
          opened.kept(),
          opened.report().notes().stream().map(ReadingReport.Note::line).toList());
    } catch (DesignFileException problem) {
      throw problem.wantsPassword()
          ? new Protected(problem.getMessage(), problem)
          : new Refused(problem.getMessage(), problem);
    }
  }
}
