package zonewright.workbook;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * Replaces a file as a whole or not at all: the new one is written beside it, forced to the disk,
 * and then takes its name. What stood there before stays beside it under {@link #backup}.
 */
final class SafeSave {
  private SafeSave() {}

  /** Writes the content of a file. */
  interface Content {
    void to(OutputStream stream) throws IOException;
  }

  /** Returns where the last version is kept: {@code garden.bak.xlsx} beside {@code garden.xlsx}. */
  static Path backup(Path file) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return file.resolveSibling(
        dot <= 0 ? name + ".bak" : name.substring(0, dot) + ".bak" + name.substring(dot));
  }

  /** Replaces the file. */
  static void replace(Path target, Content content) throws DesignFileException {
    Path file = real(target);
    Path folder = file.getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new DesignFileException("There is no folder %s to save in.".formatted(folder));
    }
    if (Files.isDirectory(file)) {
      throw new DesignFileException("%s is a folder, not a file.".formatted(file));
    }
    Optional<Path> lock = openElsewhere(file);
    if (lock.isPresent()) {
      throw new DesignFileException(
          "%s was not saved: a spreadsheet program has it open (its mark is %s); close it there, or save under another name."
              .formatted(file, lock.get().getFileName()));
    }
    Path fresh = null;
    try {
      fresh = folder.resolve("." + file.getFileName() + "." + UUID.randomUUID() + ".part");
      write(fresh, content);
      if (Files.exists(file)) {
        Files.copy(file, backup(file), StandardCopyOption.REPLACE_EXISTING);
      }
      move(fresh, file);
    } catch (IOException | ReadOnlyFileSystemException problem) {
      discard(fresh);
      throw new DesignFileException(sentence(file, problem), problem);
    } catch (RuntimeException | Error problem) {
      discard(fresh);
      throw problem;
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

  private static void write(Path fresh, Content content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(fresh, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
      OutputStream stream = new BufferedOutputStream(Channels.newOutputStream(channel));
      content.to(stream);
      stream.flush();
      channel.force(true);
    }
  }

  private static void move(Path fresh, Path file) throws IOException {
    try {
      Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException noMatter) {
      Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static Path real(Path target) {
    try {
      return target.toRealPath();
    } catch (IOException notThereYet) {
      return target.toAbsolutePath().normalize();
    }
  }

  private static void discard(Path fresh) {
    if (fresh != null) {
      try {
        Files.deleteIfExists(fresh);
      } catch (IOException leftBehind) {
        fresh.toFile().deleteOnExit();
      }
    }
  }

  private static String sentence(Path file, Exception problem) {
    String said = String.valueOf(problem.getMessage()).toLowerCase(Locale.ROOT);
    if (said.contains("no space") || said.contains("not enough space") || said.contains("quota")) {
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
