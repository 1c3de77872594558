package zonewright.workbook;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import zonewright.disk.Claims;
import zonewright.disk.Disk;
import zonewright.disk.DiskFile;
import zonewright.disk.FileNames;

/**
 * Replaces a file as a whole or not at all: the new one is written beside it, forced to the disk,
 * and then takes its name. What stood there before stays beside it under {@link #backup}.
 */
final class SafeSave {
  private static final Logger LOG = Logger.getLogger(SafeSave.class.getName());
  private static final String PART = ".part";
  private static final Pattern PARTS = Pattern.compile("\\.[0-9a-f-]{36}\\.part$");
  private static final int BUFFER = 1 << 16;

  private SafeSave() {}

  /** Writes the content of a file. */
  interface Content {
    void to(OutputStream stream) throws IOException;
  }

  /** Returns where the last version is kept: {@code garden.bak.xlsx} beside {@code garden.xlsx}. */
  static Path backup(Path file) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot <= 0
        ? FileNames.beside(file, "", name, ".bak")
        : FileNames.beside(file, "", name.substring(0, dot), ".bak" + name.substring(dot));
  }

  /** Looks at what was written before it takes the place of what is there. */
  interface Check {
    void of(Path written) throws DesignFileException;
  }

  /** Replaces the file. */
  static void replace(Path target, Content content) throws DesignFileException {
    replace(target, content, written -> {});
  }

  /** Replaces the file, unless a look at what was written says no. */
  static void replace(Path target, Content content, Check check) throws DesignFileException {
    replace(Disk.REAL, target, content, check);
  }

  /**
   * Replaces the file, on a disk of its own for tests. A loss of power at any moment leaves the old
   * file or the new one, and beside it a whole version before or none.
   */
  static void replace(Disk disk, Path target, Content content, Check check)
      throws DesignFileException {
    Path file = real(target);
    Path folder = file.getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new DesignFileException("There is no folder %s to save in.".formatted(folder));
    }
    if (Files.isDirectory(file)) {
      throw new DesignFileException("%s is a folder, not a file.".formatted(file));
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new DesignFileException(
          "%s is no ordinary file; save under another name.".formatted(file));
    }
    Optional<Path> lock = openElsewhere(file);
    if (lock.isPresent()) {
      throw new DesignFileException(
          "%s was not saved: a spreadsheet program has it open (its mark is %s); close it there, or save under another name."
              .formatted(file, lock.get().getFileName()));
    }
    try {
      clear(disk, file);
      Optional<Path> before = Optional.of(file).filter(Files::exists);
      if (before.isPresent() && !Files.isWritable(file)) {
        throw new AccessDeniedException(file.toString());
      }
      try (DiskFile fresh = written(disk, file, before, content)) {
        check.of(fresh.created());
        if (before.isPresent()) {
          keepBefore(disk, file);
        }
        disk.move(fresh.created(), file);
        disk.forceFolder(folder);
      } finally {
        clear(disk, file);
      }
    } catch (IOException | ReadOnlyFileSystemException problem) {
      throw new DesignFileException(sentence(file, problem), problem);
    }
  }

  /** The mark that spreadsheet programs leave beside a file they have open. */
  private static Optional<Path> openElsewhere(Path file) {
    String name = file.getFileName().toString();
    return Stream.of("~$" + name, ".~lock." + name + "#")
        .map(file::resolveSibling)
        .filter(Files::exists)
        .findFirst();
  }

  private static void keepBefore(Disk disk, Path file) throws IOException {
    try (DiskFile copy =
        written(disk, file, Optional.of(file), stream -> Files.copy(file, stream))) {
      Files.setLastModifiedTime(copy.created(), Files.getLastModifiedTime(file));
      disk.move(copy.created(), backup(file));
      disk.forceFolder(file.getParent());
    }
  }

  /** Writes a passing file beside another and forces it to the disk; it is still in hand. */
  private static DiskFile written(Disk disk, Path file, Optional<Path> like, Content content)
      throws IOException {
    Path part =
        FileNames.beside(file, ".", file.getFileName().toString(), "." + UUID.randomUUID() + PART);
    DiskFile fresh = disk.create(part, like);
    try {
      OutputStream stream = new BufferedOutputStream(new Written(disk, fresh), BUFFER);
      content.to(stream);
      stream.flush();
      disk.force(fresh);
      return fresh;
    } catch (IOException | RuntimeException | Error problem) {
      fresh.close();
      throw problem;
    }
  }

  /** What is written goes to a file. */
  private static final class Written extends OutputStream {
    private final Disk disk;
    private final DiskFile file;

    Written(Disk disk, DiskFile file) {
      this.disk = disk;
      this.file = file;
    }

    @Override
    public void write(int single) throws IOException {
      write(new byte[] {(byte) single}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
      disk.write(file, bytes, from, count);
    }
  }

  /** Deletes what savings of this file left that were ended before they were through. */
  private static void clear(Disk disk, Path file) {
    String name = file.getFileName().toString();
    try (Stream<Path> beside = Files.list(file.getParent())) {
      for (Path part : beside.filter(each -> partOf(name, each)).toList()) {
        if (!Claims.live(part)) {
          disk.delete(part);
        }
      }
    } catch (IOException | UncheckedIOException stays) {
      LOG.log(Level.FINE, "a part of a saving stays", stays);
    }
  }

  private static boolean partOf(String name, Path file) {
    String[] parts = PARTS.split(file.getFileName().toString(), -1);
    return parts.length == 2
        && parts[0].startsWith(".")
        && name.startsWith(parts[0].substring(1))
        && parts[1].isEmpty();
  }

  private static Path real(Path target) {
    try {
      return target.toRealPath();
    } catch (IOException notThereYet) {
      return target.toAbsolutePath().normalize();
    }
  }

  private static String sentence(Path file, Exception problem) {
    String said = String.valueOf(problem.getMessage()).toLowerCase(Locale.ROOT);
    if (said.contains("space") || said.contains("quota")) {
      return "%s was not saved: the disk is full.".formatted(file);
    }
    if (said.contains("being used by another process")) {
      return "%s was not saved: another program has it open; close it there, or save under another name."
          .formatted(file);
    }
    if (problem instanceof AccessDeniedException
        || problem instanceof NoSuchFileException
        || said.contains("read-only")) {
      return "%s was not saved: the folder or the file may not be written to; save in another folder."
          .formatted(file);
    }
    if (problem instanceof ReadOnlyFileSystemException) {
      return "%s was not saved: the disk may not be written to; save in another folder."
          .formatted(file);
    }
    String reason =
        problem instanceof FileSystemException system && system.getReason() != null
            ? system.getReason()
            : String.valueOf(problem.getMessage());
    return "%s was not saved: %s.".formatted(file, reason);
  }
}
