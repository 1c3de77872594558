package zonewright.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Which files somebody has in hand.
 *
 * <p>A claim is a lock the system holds for the process, in the network too, and lets go when the
 * process ends however it ends: no number of a process that another may have by now, no clock. It
 * lies far behind the end of the file, so that everybody can read what is in it.
 */
public final class Claims {
  private static final long WHERE = Long.MAX_VALUE - 1;

  /**
   * What this process has in hand. Such a file is never opened a second time: closing it would let
   * the lock go.
   */
  private static final Map<FileChannel, Path> OWN = new ConcurrentHashMap<>();

  private Claims() {}

  static void claim(FileChannel channel, Path file) throws IOException {
    FileLock lock = channel.tryLock(WHERE, 1, false);
    if (lock == null) {
      throw new IOException("somebody has " + file + " in hand");
    }
    OWN.put(channel, key(file));
  }

  static void moved(Path from, Path to) {
    Path before = key(from);
    OWN.replaceAll((channel, path) -> path.equals(before) ? key(to) : path);
  }

  static void givenUp(FileChannel channel) {
    OWN.remove(channel);
  }

  private static Path key(Path file) {
    Path whole = file.toAbsolutePath().normalize();
    try {
      Path folder = whole.getParent();
      return folder == null ? whole : folder.toRealPath().resolve(whole.getFileName());
    } catch (IOException gone) {
      return whole;
    }
  }

  /** Says whether this process has a file in hand. */
  public static boolean own(Path file) {
    return OWN.containsValue(key(file));
  }

  /** Says whether anybody has a file in hand, as far as that can be seen; where not, yes. */
  public static boolean live(Path file) {
    if (own(file)) {
      return true;
    }
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      FileLock lock = channel.tryLock(WHERE, 1, true);
      return lock == null;
    } catch (IOException | OverlappingFileLockException unknown) {
      return true;
    }
  }
}
