package zonewright.recovery;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import javax.crypto.Cipher;
import javax.crypto.SecretKey;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.PBEKeySpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * Closes the groups of a record with the password of its design, each for itself, so that the
 * record can still be written on at its end and read as far as it is whole.
 *
 * <p>Source: the key comes of the password by PBKDF2 with HMAC-SHA-512 (RFC 8018) in 210,000
 * rounds, a group is closed by AES-256-GCM with a number of its own (NIST SP 800-38D).
 */
final class RecordLock {
  /** The line that says how the record is closed. */
  static final String LOCKED = "locked";

  /** The line of a closed group. */
  private static final String CLOSED = "closed";

  private static final int ROUNDS = 210_000;
  private static final int KEY_BITS = 256;
  private static final int TAG_BITS = 128;
  private static final int SALT_BYTES = 16;
  private static final int NUMBER_BYTES = 12;
  private static final SecureRandom RANDOM = new SecureRandom();

  private final byte[] salt;
  private final SecretKey key;

  private RecordLock(byte[] salt, SecretKey key) {
    this.salt = salt;
    this.key = key;
  }

  /** Makes a lock for a password. */
  static RecordLock of(String password) {
    return of(password, random(SALT_BYTES));
  }

  /**
   * Returns the lock a line tells of, as a password opens it; whether it is the right one shows
   * when a group is opened.
   *
   * @throws IllegalArgumentException or IndexOutOfBoundsException when the line tells of none
   */
  static RecordLock of(String password, String line) {
    return of(password, Base64.getDecoder().decode(line.split("\t", -1)[1]));
  }

  private static RecordLock of(String password, byte[] salt) {
    try {
      PBEKeySpec word = new PBEKeySpec(password.toCharArray(), salt, ROUNDS, KEY_BITS);
      byte[] bytes =
          SecretKeyFactory.getInstance("PBKDF2WithHmacSHA512").generateSecret(word).getEncoded();
      return new RecordLock(salt, new SecretKeySpec(bytes, "AES"));
    } catch (GeneralSecurityException problem) {
      throw new IllegalStateException(problem); // every Java has both
    }
  }

  private static byte[] random(int count) {
    byte[] bytes = new byte[count];
    RANDOM.nextBytes(bytes);
    return bytes;
  }

  /** Returns the line that tells of the lock, of no use to whoever has no password. */
  String line() {
    return LOCKED + "\t" + Base64.getEncoder().encodeToString(salt);
  }

  /** Returns the lines of a group, closed. */
  List<String> closed(List<String> lines) {
    byte[] number = random(NUMBER_BYTES);
    byte[] text = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
    try {
      Base64.Encoder letters = Base64.getEncoder();
      return List.of(
          String.join(
              "\t",
              CLOSED,
              letters.encodeToString(number),
              letters.encodeToString(cipher(Cipher.ENCRYPT_MODE, number).doFinal(text))));
    } catch (GeneralSecurityException problem) {
      throw new IllegalStateException(problem);
    }
  }

  /** Says whether a group is closed. */
  static boolean closes(List<String> lines) {
    return lines.size() == 1 && lines.get(0).startsWith(CLOSED + "\t");
  }

  /** Returns the lines of a closed group; none where another password closed it. */
  Optional<List<String>> opened(List<String> lines) {
    String[] parts = lines.get(0).split("\t", -1);
    try {
      byte[] number = Base64.getDecoder().decode(parts[1]);
      byte[] text =
          cipher(Cipher.DECRYPT_MODE, number).doFinal(Base64.getDecoder().decode(parts[2]));
      return Optional.of(List.of(new String(text, StandardCharsets.UTF_8).split("\n", -1)));
    } catch (GeneralSecurityException
        | IllegalArgumentException
        | IndexOutOfBoundsException another) {
      return Optional.empty();
    }
  }

  private Cipher cipher(int mode, byte[] number) throws GeneralSecurityException {
    Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
    cipher.init(mode, key, new GCMParameterSpec(TAG_BITS, number));
    return cipher;
  }
}
