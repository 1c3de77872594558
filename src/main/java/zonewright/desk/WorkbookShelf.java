package zonewright.desk;

import java.nio.file.Path;
import zonewright.design.Design;

/** Keeps designs as workbooks. */
final class WorkbookShelf implements Shelf {
  @Override
  public void put(Design design, Path file) throws Exception {
    throw new java.io.IOException("not yet");
  }

  @Override
  public Taken take(Path file) throws Exception {
    throw new java.io.IOException("not yet");
  }
}
