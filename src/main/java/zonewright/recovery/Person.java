package zonewright.recovery;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.stream.Stream;

/** Who is at this machine, in words for somebody at another. */
final class Person {
  private Person() {}

  /** Returns the name of the person who is logged in and of the machine. */
  static String words() {
    String machine =
        Stream.of(System.getenv("COMPUTERNAME"), System.getenv("HOSTNAME"), hostName())
            .filter(Objects::nonNull)
            .map(String::strip)
            .filter(name -> !name.isEmpty())
            .findFirst()
            .orElse("an unnamed computer");
    return System.getProperty("user.name", "somebody") + " on " + machine;
  }

  private static String hostName() {
    try {
      return Files.readString(Path.of("/etc/hostname"));
    } catch (IOException notHere) {
      return null;
    }
  }
}
