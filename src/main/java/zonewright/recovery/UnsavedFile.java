package zonewright.recovery;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import zonewright.disk.Claims;
import zonewright.disk.FileNames;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Schema;

/**
 * A file with what was entered and not saved: groups of lines, each between a line that opens it
 * and a line with its check sum. The first says whose it is, the second what the design's file
 * held, each further one what an edit changed. A group that is not whole is left out. Where a
 * password protects the design, all but whose it is is closed with it ({@link RecordLock}).
 *
 * <p>It is there from when the design is opened until it is saved or closed. As long as its window
 * lives it is claimed ({@link Claims}), so it also tells other windows who has the file open.
 */
public final class UnsavedFile {
  static final String ENDING = ".unsaved";
  static final String HEAD = "zonewright unsaved 2";
  static final String OPENING = "group";

  /** The line that says that all before it is what the design's file held. */
  static final String BASE = "base";

  /** The line that says that all before it was about to be saved. */
  static final String SAVING = "saving";

  /** Whose the records are that this process writes; those are never opened a second time. */
  static final Map<Path, Head> OURS = new ConcurrentHashMap<>();

  private UnsavedFile() {}

  /**
   * Whose a record is.
   *
   * @param id what no other record is called
   * @param name what the design was called
   * @param design the file the design belongs to, if it has one
   * @param digest the {@link #digest} of that file when it was read or saved; empty where there is
   *     none
   * @param who the person and the machine
   * @param since when the window began to work on it
   * @param over the records whose files it took over, and how often it has gone back and forth
   */
  public record Head(
      String id,
      String name,
      Optional<Path> design,
      String digest,
      String who,
      Instant since,
      Map<String, Integer> over) {
    public Head {
      over = Map.copyOf(over);
    }

    /** Says whether another window comes before this one in working on the file of both. */
    public boolean yieldsTo(Head other) {
      int theirs = other.over().getOrDefault(id, 0);
      int ours = over.getOrDefault(other.id(), 0);
      int later = since.compareTo(other.since());
      return theirs != ours ? theirs > ours : later != 0 ? later > 0 : id.compareTo(other.id()) > 0;
    }

    String line() {
      return String.join(
          "\t",
          "for",
          id,
          EntryText.escaped(name),
          EntryText.escaped(design.map(path -> path.toAbsolutePath().toString()).orElse("")),
          digest,
          EntryText.escaped(who),
          Long.toString(since.toEpochMilli()));
    }

    static Head read(String line, Map<String, Integer> over, FileSystem disk) {
      String[] parts = line.split("\t", -1);
      String whole = EntryText.plain(parts[3]);
      return new Head(
          parts[1],
          EntryText.plain(parts[2]),
          whole.isEmpty() ? Optional.empty() : Optional.of(disk.getPath(whole)),
          parts[4],
          EntryText.plain(parts[5]),
          Instant.ofEpochMilli(Long.parseLong(parts[6])),
          over);
    }
  }

  /**
   * What a record holds.
   *
   * @param head whose it is; none where that cannot be read
   * @param when the last time it was written
   * @param base what the design's file held; none where it had none
   * @param saves what was about to be saved since, each time
   * @param book what was entered; none where not one group of it is whole
   * @param whole whether it could be read to its end
   * @param locked whether a password closes some of it that is not the one given
   * @param empty whether there is nothing in it: its window ended as it was made
   */
  public record Found(
      Path file,
      Optional<Head> head,
      Instant when,
      Optional<BookSnapshot> base,
      List<BookSnapshot> saves,
      Optional<BookSnapshot> book,
      boolean whole,
      boolean locked,
      boolean empty) {
    /**
     * Returns the moment of the record at which the file was as it is now; none where something
     * else was saved there since.
     *
     * @param digest of the file
     * @param read what the file holds
     */
    public Optional<BookSnapshot> at(String digest, BookSnapshot read) {
      if (head.filter(known -> known.digest().equals(digest)).isPresent()) {
        return base;
      }
      return saves.stream().filter(read::sameEntries).reduce((earlier, later) -> later);
    }

    /** Says whether its window ended before anything was typed. */
    public boolean untouched() {
      return empty || (whole && book.isEmpty()); // one that is locked is not whole
    }
  }

  /**
   * The records of one design.
   *
   * @param left those whose windows are gone, the latest first
   * @param live those of windows that live, this one's own among them
   */
  public record Around(List<Path> left, List<Head> live) {
    /** Returns who works on the file before the window with a record of this identity. */
    public Optional<Head> holder(String id) {
      Optional<Head> own = live.stream().filter(each -> each.id().equals(id)).findFirst();
      return live.stream()
          .filter(each -> !each.id().equals(id))
          .filter(each -> own.map(mine -> mine.yieldsTo(each)).orElse(true))
          .findFirst();
    }
  }

  /** Returns where the record with an identity of a design's file lies: beside it, hidden. */
  static Path beside(Path design, String id) {
    return FileNames.beside(
        design, ".", design.getFileName().toString(), "." + id.substring(0, 8) + ENDING);
  }

  /**
   * Returns what tells a file from one with other content, in letters; empty where it cannot be
   * read.
   */
  public static String digest(Path file) {
    try (InputStream stream = Files.newInputStream(file)) {
      MessageDigest sum = MessageDigest.getInstance("SHA-256");
      byte[] bytes = new byte[1 << 16];
      for (int count = stream.read(bytes); count >= 0; count = stream.read(bytes)) {
        sum.update(bytes, 0, count);
      }
      return HexFormat.of().formatHex(sum.digest());
    } catch (IOException | NoSuchAlgorithmException unreadable) {
      return "";
    }
  }

  /**
   * Returns the lines of a group with what opens and closes it. It begins with a line of its own,
   * so that damage to the end of one group leaves the next whole.
   */
  static String group(List<String> lines) {
    return "\n" + OPENING + "\n" + String.join("\n", lines) + "\n" + closing(lines) + "\n";
  }

  private static String closing(List<String> lines) {
    CRC32 sum = new CRC32();
    lines.forEach(line -> sum.update((line + "\n").getBytes(StandardCharsets.UTF_8)));
    return "end\t" + Long.toHexString(sum.getValue());
  }

  /** Takes whole groups. */
  private interface Groups {
    /**
     * Takes a group.
     *
     * @return whether another is wanted
     */
    boolean take(List<String> lines);
  }

  /** Hands on each whole group; says whether all of the file is whole groups. */
  private static boolean through(Path file, Groups groups) throws IOException {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8))) {
      boolean whole = HEAD.equals(reader.readLine());
      Optional<List<String>> group = Optional.empty();
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        if (line.equals(OPENING)) {
          whole &= group.isEmpty();
          group = Optional.of(new ArrayList<>());
        } else if (group.isEmpty() || line.isEmpty()) {
          whole &= line.isEmpty();
        } else if (!line.startsWith("end\t")) {
          group.get().add(line);
        } else {
          boolean good = line.equals(closing(group.get()));
          whole &= good;
          if (good && !groups.take(group.get())) {
            return whole;
          }
          group = Optional.empty();
        }
      }
      return whole && group.isEmpty();
    }
  }

  /** Returns what a record holds, as far as its groups are whole; nothing where it is gone. */
  public static Optional<Found> read(Path file, Schema schema) {
    return read(file, schema, Optional.empty());
  }

  /**
   * The same of a record of a protected design.
   *
   * @param password the design's; without it only whose the record is can be read
   */
  public static Optional<Found> read(Path file, Schema schema, Optional<String> password) {
    Rebuilt rebuilt = new Rebuilt(schema, password);
    try {
      boolean whole =
          through(
              file,
              lines -> {
                rebuilt.takeAll(lines);
                return true;
              });
      return Optional.of(
          new Found(
              file,
              rebuilt.head(file.getFileSystem()),
              Files.getLastModifiedTime(file).toInstant(),
              rebuilt.base(),
              rebuilt.saves(),
              rebuilt.snapshot(),
              whole && rebuilt.understood(),
              rebuilt.locked(),
              Files.size(file) == 0));
    } catch (IOException | UncheckedIOException gone) {
      return Optional.empty();
    }
  }

  /** Returns whose a record is; none where that cannot be read. */
  private static Optional<Head> head(Path file) {
    Head ours = OURS.get(file.toAbsolutePath());
    if (ours != null) {
      return Optional.of(ours);
    }
    Map<String, Integer> over = new HashMap<>();
    List<String> first = new ArrayList<>();
    try {
      through(
          file,
          lines -> {
            lines.stream().filter(line -> line.startsWith("for\t")).forEach(first::add);
            lines.stream().map(line -> line.split("\t", -1)).forEach(line -> over(line, over));
            return true;
          });
      return first.stream().findFirst().map(line -> Head.read(line, over, file.getFileSystem()));
    } catch (IOException | UncheckedIOException | IllegalArgumentException unreadable) {
      return Optional.empty();
    } catch (IndexOutOfBoundsException cutShort) {
      return Optional.empty();
    }
  }

  static void over(String[] line, Map<String, Integer> over) {
    if (line.length == 3 && line[0].equals("over")) {
      over.put(line[1], Integer.valueOf(line[2]));
    }
  }

  /**
   * Returns the records of a design's file, from beside it and from where they lie when its folder
   * cannot be written. A file that was moved since is known by what is in it.
   *
   * @param digest the {@link #digest} of the file
   * @param spare the folder of records that cannot lie beside their design
   */
  public static Around around(Path design, String digest, Path spare) {
    List<Path> left = new ArrayList<>();
    List<Head> live = new ArrayList<>();
    Path whole = real(design);
    for (Path folder : List.of(whole.getParent(), spare)) {
      for (Path record : records(folder)) {
        boolean claimed = Claims.live(record);
        Optional<Head> head = head(record);
        boolean belongs =
            head.map(each -> belongs(each, whole, digest))
                .orElseGet(() -> record.equals(sameName(record, whole)));
        if (belongs && !claimed) {
          left.add(record);
        } else if (belongs) {
          head.ifPresent(live::add);
        }
      }
    }
    left.sort((one, other) -> time(other).compareTo(time(one)));
    return new Around(left, live);
  }

  private static boolean belongs(Head head, Path design, String digest) {
    return head.design()
        .filter(
            path ->
                real(path).equals(design)
                    || (!digest.isEmpty() && digest.equals(head.digest()) && !Files.exists(path)))
        .isPresent();
  }

  /** Returns what a record whose first lines are lost would be called as one of a design's. */
  private static Path sameName(Path record, Path design) {
    String name = record.getFileName().toString();
    int end = name.length() - ENDING.length();
    return end < 8 ? design : beside(design, name.substring(end - 8, end));
  }

  /** Returns the records whose windows are gone of designs in no file, or in none that is there. */
  public static List<Path> leftWithoutFile(Path spare) {
    return records(spare).stream()
        .filter(record -> !Claims.live(record))
        .filter(record -> head(record).flatMap(Head::design).filter(Files::exists).isEmpty())
        .sorted((one, other) -> time(other).compareTo(time(one)))
        .toList();
  }

  private static Instant time(Path file) {
    try {
      return Files.getLastModifiedTime(file).toInstant();
    } catch (IOException gone) {
      return Instant.EPOCH;
    }
  }

  /** Returns the records in a folder. */
  private static List<Path> records(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> file.getFileName().toString().endsWith(ENDING))
          .filter(file -> Files.isRegularFile(file) && Files.isReadable(file))
          .sorted()
          .toList();
    } catch (IOException | UncheckedIOException unreadable) {
      return List.of();
    }
  }

  /** Returns a file by the one name it has for all. */
  static Path real(Path file) {
    try {
      return file.toRealPath();
    } catch (IOException | InvalidPathException gone) {
      return file.toAbsolutePath().normalize();
    }
  }
}
