package zonewright.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.AclFileAttributeView;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Who may read and write a file. */
public final class Access {
  private static final Logger LOG = Logger.getLogger(Access.class.getName());

  private Access() {}

  /**
   * Lets those read and write a file who may read and write another. Where its group cannot be
   * given, the group may do no more than everybody.
   */
  static void same(Path from, Path to) throws IOException {
    PosixFileAttributeView source = Files.getFileAttributeView(from, PosixFileAttributeView.class);
    PosixFileAttributeView target = Files.getFileAttributeView(to, PosixFileAttributeView.class);
    if (source != null && target != null) {
      PosixFileAttributes wanted = source.readAttributes();
      Set<PosixFilePermission> permissions = EnumSet.noneOf(PosixFilePermission.class);
      permissions.addAll(wanted.permissions());
      if (!target.readAttributes().group().equals(wanted.group())) {
        try {
          target.setGroup(wanted.group());
        } catch (IOException notOurs) {
          narrow(permissions);
        }
      }
      target.setPermissions(permissions);
      return;
    }
    AclFileAttributeView list = Files.getFileAttributeView(from, AclFileAttributeView.class);
    AclFileAttributeView given = Files.getFileAttributeView(to, AclFileAttributeView.class);
    if (list != null && given != null) {
      given.setAcl(list.getAcl());
    }
  }

  private static void narrow(Set<PosixFilePermission> permissions) {
    if (!permissions.contains(PosixFilePermission.OTHERS_READ)) {
      permissions.remove(PosixFilePermission.GROUP_READ);
    }
    if (!permissions.contains(PosixFilePermission.OTHERS_WRITE)) {
      permissions.remove(PosixFilePermission.GROUP_WRITE);
    }
    permissions.remove(PosixFilePermission.GROUP_EXECUTE);
  }

  /** Makes a folder of the program, the person's own: nobody else sees what is in it. */
  public static void ownFolder(Path folder) throws IOException {
    Files.createDirectories(folder);
    PosixFileAttributeView view =
        Files.getFileAttributeView(folder, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    if (view != null) {
      try {
        view.setPermissions(PosixFilePermissions.fromString("rwx------"));
      } catch (IOException notOurs) {
        LOG.log(Level.FINE, "a folder that is somebody else's", notOurs);
      }
    }
  }
}
