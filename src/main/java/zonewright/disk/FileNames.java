package zonewright.disk;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Names of files made from names of files, which no disk finds too long. */
public final class FileNames {
  /** The most bytes a name may have on the disks in use. */
  private static final int MOST_BYTES = 255;

  private FileNames() {}

  /** Returns the file beside another whose name is put together, its middle cut where too long. */
  public static Path beside(Path file, String before, String name, String after) {
    String kept = name;
    while (!kept.isEmpty()
        && (before + kept + after).getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
      kept = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1));
    }
    return file.resolveSibling(before + kept + after);
  }
}
