package zonewright.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.Optional;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** Workbooks protected by a password: opened and closed in memory, never put on a disk open. */
final class PasswordProtection {
  private PasswordProtection() {}

  /** A workbook that is opened with a password alone; the message is a sentence. */
  static final class Needed extends DesignFileException {
    Needed(String sentence) {
      super(sentence);
    }
  }

  /**
   * Returns what a protected file holds.
   *
   * @throws Needed where no password is given, or another
   */
  static byte[] opened(Path file, POIFSFileSystem parts, Optional<String> password)
      throws IOException, DesignFileException {
    if (password.isEmpty()) {
      throw new Needed(
          "%s is protected by a password; open it in the window, or give the command at a terminal, where it is asked for."
              .formatted(file));
    }
    try {
      Decryptor key = Decryptor.getInstance(new EncryptionInfo(parts));
      if (!key.verifyPassword(password.get())) {
        throw new Needed("That is not the password of %s.".formatted(file));
      }
      ByteArrayOutputStream content = new ByteArrayOutputStream();
      try (InputStream stream = key.getDataStream(parts)) {
        byte[] bytes = new byte[1 << 16];
        for (int count = stream.read(bytes); count >= 0; count = stream.read(bytes)) {
          if (content.size() + count > WorkbookOpening.LARGEST_FILE) {
            throw new DesignFileException(
                "%s is larger than designs that are opened.".formatted(file));
          }
          content.write(bytes, 0, count);
        }
      }
      return content.toByteArray();
    } catch (GeneralSecurityException | EncryptedDocumentException problem) {
      throw new DesignFileException(
          "%s is protected in a way that is not known here; save it without a password in a spreadsheet program."
              .formatted(file),
          problem);
    }
  }

  /** Returns content as it is written to a disk: closed by the password, if there is one. */
  static SafeSave.Content closed(Optional<String> password, SafeSave.Content content) {
    return password.isEmpty() ? content : stream -> close(password.get(), content, stream);
  }

  private static void close(String password, SafeSave.Content content, OutputStream to)
      throws IOException {
    try (POIFSFileSystem parts = new POIFSFileSystem()) {
      Encryptor lock = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      lock.confirmPassword(password);
      try (OutputStream stream = lock.getDataStream(parts)) {
        content.to(stream);
      }
      parts.writeFilesystem(to);
    } catch (GeneralSecurityException problem) {
      throw new IOException(problem);
    }
  }
}
