package zonewright.desk.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Optional;

/** By what one sees that a file is no longer the one it was: its time, its size and its place. */
public record FileStamp(FileTime time, long size, Optional<Object> key) {
  /** Returns the stamp of a file; none where it is not there. */
  static Optional<FileStamp> of(Path file) {
    try {
      BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
      return Optional.of(
          new FileStamp(
              found.lastModifiedTime(), found.size(), Optional.ofNullable(found.fileKey())));
    } catch (IOException gone) {
      return Optional.empty();
    }
  }
}
