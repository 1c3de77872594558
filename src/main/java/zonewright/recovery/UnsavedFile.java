package zonewright.recovery;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import zonewright.sheet.Blueprint;
import zonewright.sheet.BookSnapshot;

/**
 * A file with what was entered and not saved: a head, then groups of lines, each closed by a line
 * with their check sum. What was being written when the power went lacks its last line and is left
 * out.
 */
public final class UnsavedFile {
  static final String ENDING = ".unsaved";
  private static final int PARTS = 5;
  private static final String HEAD = "zonewright unsaved 1";

  private UnsavedFile() {}

  /**
   * What such a file holds.
   *
   * @param name what the design was called
   * @param design the file the design belongs to, if it has one
   * @param when the last time it was written
   * @param book what was entered
   */
  public record Found(
      Path file, String name, Optional<Path> design, Instant when, BookSnapshot book) {}

  /** Returns where the record of a design's file lies: beside it, hidden. */
  public static Path beside(Path design) {
    return design.resolveSibling("." + design.getFileName() + ENDING);
  }

  /** Returns the first line: who writes, and for which design. */
  static String head(String name, Optional<Path> design) {
    ProcessHandle self = ProcessHandle.current();
    String whole = design.map(path -> path.toAbsolutePath().toString()).orElse("");
    return String.join(
        "\t",
        HEAD,
        Long.toString(self.pid()),
        Long.toString(started(self)),
        EntryText.escaped(name),
        EntryText.escaped(whole));
  }

  private static long started(ProcessHandle process) {
    return process.info().startInstant().map(Instant::toEpochMilli).orElse(0L);
  }

  /** Returns the line that closes a group of lines. */
  static String closing(List<String> lines) {
    CRC32 sum = new CRC32();
    lines.forEach(line -> sum.update((line + "\n").getBytes(StandardCharsets.UTF_8)));
    return "end\t" + Long.toHexString(sum.getValue());
  }

  /** Says whether the one who writes a record is still running, in another window than this. */
  public static boolean inUseElsewhere(Path file) {
    return writer(file).filter(process -> !process.equals(ProcessHandle.current())).isPresent();
  }

  /** Says whether this very process writes a record. */
  public static boolean isOurs(Path file) {
    return writer(file).filter(ProcessHandle.current()::equals).isPresent();
  }

  /** Returns the process that writes a record, if it is still running. */
  private static Optional<ProcessHandle> writer(Path file) {
    try (BufferedReader reader = Files.newBufferedReader(file)) {
      String[] head = String.valueOf(reader.readLine()).split("\t", -1);
      if (head.length < PARTS || !head[0].equals(HEAD)) {
        return Optional.empty();
      }
      long start = Long.parseLong(head[2]);
      return ProcessHandle.of(Long.parseLong(head[1]))
          .filter(ProcessHandle::isAlive)
          .filter(process -> started(process) == start);
    } catch (IOException | NumberFormatException | UncheckedIOException unreadable) {
      return Optional.empty();
    }
  }

  /** Returns what a record holds; nothing where there is none that can be read. */
  public static Optional<Found> read(Path file, Blueprint blueprint) {
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    try (BufferedReader reader = Files.newBufferedReader(file)) {
      String[] head = String.valueOf(reader.readLine()).split("\t", -1);
      if (head.length < PARTS || !head[0].equals(HEAD)) {
        return Optional.empty();
      }
      Rebuilt rebuilt = new Rebuilt(blueprint);
      List<String> group = new ArrayList<>();
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        if (!line.startsWith("end\t")) {
          group.add(line);
        } else if (line.equals(closing(group))) {
          group.forEach(rebuilt::take);
          group.clear();
        } else {
          break;
        }
      }
      Instant when = Files.getLastModifiedTime(file).toInstant();
      String name = EntryText.plain(head[3]);
      String whole = EntryText.plain(head[4]);
      Optional<Path> design = whole.isEmpty() ? Optional.empty() : Optional.of(Path.of(whole));
      return rebuilt.snapshot().map(book -> new Found(file, name, design, when, book));
    } catch (IOException | UncheckedIOException | IllegalArgumentException unreadable) {
      return Optional.empty();
    } catch (IndexOutOfBoundsException cutShort) {
      return Optional.empty();
    }
  }

  /** Returns the records in a folder whose writers are gone. */
  public static List<Path> leftOver(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> file.getFileName().toString().endsWith(ENDING))
          .filter(file -> writer(file).isEmpty())
          .sorted()
          .toList();
    } catch (IOException unreadable) {
      return List.of();
    }
  }
}
