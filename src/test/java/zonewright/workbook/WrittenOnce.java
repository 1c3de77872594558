package zonewright.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import zonewright.design.Sample;
import zonewright.units.UnitSystem;

/** Workbooks that many tests begin with: each is written once and copied from then on. */
final class WrittenOnce {
  private static final Map<String, byte[]> WRITTEN = new HashMap<>();

  private WrittenOnce() {}

  /** Writes a file. */
  interface Writing {
    void to(Path file) throws DesignFileException, IOException;
  }

  /** The demo garden in US units as {@code garden.xlsx} in a folder. */
  static Path demo(Path folder) {
    return copy(
        "demo",
        folder.resolve("garden.xlsx"),
        file -> DesignFile.write(Designs.demo(UnitSystem.US), file));
  }

  /** The sample of a retrofit as {@code campus.xlsx} in a folder. */
  static Path campus(Path folder, UnitSystem system) {
    return copy(
        "campus " + system,
        folder.resolve("campus.xlsx"),
        file -> DesignFile.write(Sample.CAMPUS_RETROFIT.design(system), file));
  }

  /**
   * Puts a file in its place.
   *
   * @param name what is written; the same name is the same content
   * @param writing writes it, when it is asked for the first time
   */
  static synchronized Path copy(String name, Path file, Writing writing) {
    try {
      if (WRITTEN.containsKey(name)) {
        return Files.write(file, WRITTEN.get(name));
      }
      writing.to(file);
      WRITTEN.put(name, Files.readAllBytes(file));
      return file;
    } catch (IOException exception) {
      throw new UncheckedIOException(exception);
    } catch (DesignFileException sentence) {
      throw new IllegalStateException(sentence);
    }
  }
}
