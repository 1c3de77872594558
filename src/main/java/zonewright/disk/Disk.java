package zonewright.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * The steps by which files come to stand on a disk. Each is a method, so that a test can cut the
 * power between any two of them.
 */
public interface Disk {
  /** Nobody else reads a file before it has the permissions it takes. */
  FileAttribute<Set<PosixFilePermission>> OWN =
      PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"));

  /** The disk as it is. */
  Disk REAL = new Disk() {};

  /**
   * Creates a file that is not there yet; nobody else's while it is open, see {@link Claims}.
   *
   * @param like whose permissions it takes; the usual ones where none is named
   */
  default DiskFile create(Path file, Optional<Path> like) throws IOException {
    boolean own =
        like.isPresent() && file.getFileSystem().supportedFileAttributeViews().contains("posix");
    FileChannel channel =
        FileChannel.open(
            file,
            Set.of(StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW),
            own ? new FileAttribute<?>[] {OWN} : new FileAttribute<?>[0]);
    try {
      if (like.isPresent()) {
        Access.same(like.get(), file);
      }
      Claims.claim(channel, file);
      return new DiskFile(channel, file);
    } catch (IOException | RuntimeException problem) {
      channel.close();
      Files.deleteIfExists(file);
      throw problem;
    }
  }

  /** Writes at the end of a file. */
  default void write(DiskFile file, byte[] bytes, int from, int count) throws IOException {
    file.write(bytes, from, count);
  }

  /** Returns when what was written of a file is on the disk, also after a loss of power. */
  default void force(DiskFile file) throws IOException {
    file.force();
  }

  /** Gives a file another name, in place of what has it; at no moment is there neither. */
  default void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException noMatter) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
    Claims.moved(from, to);
  }

  /** Deletes a file, if it is there. */
  default void delete(Path file) throws IOException {
    Files.deleteIfExists(file);
  }

  /** Returns when the names in a folder are on the disk; some systems see to that themselves. */
  default void forceFolder(Path folder) {
    try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
      names.force(true);
    } catch (IOException | UnsupportedOperationException notHere) {
      Logger.getLogger(Disk.class.getName()).log(Level.FINEST, "a folder not forced", notHere);
    }
  }
}
