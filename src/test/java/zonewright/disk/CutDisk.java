package zonewright.disk;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * A disk that notes each step and tells what may be left of its files if the power goes after any
 * of them.
 *
 * <p>What may be left is taken as badly as file systems allow: of what was written and not forced,
 * all, half or nothing; of the changes of names since the folder was forced, any of them in any
 * combination.
 */
public final class CutDisk implements Disk {
  private final List<Step> steps = new ArrayList<>();
  private final Map<DiskFile, Integer> numbers = new HashMap<>();
  private final Map<Path, byte[]> before = new TreeMap<>();

  /** A step: content of a file by its number, a change of names, or a forcing. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  private record Step(String what, int file, byte[] bytes, Path from, Path to) {}

  /** Begins with what stands in a folder already, all of it on the disk. */
  public CutDisk(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        before.put(file, Files.readAllBytes(file));
      }
    }
  }

  private synchronized void note(String what, int file, byte[] bytes, Path from, Path to) {
    steps.add(new Step(what, file, bytes, from, to));
  }

  @Override
  public DiskFile create(Path path, Optional<Path> like) throws IOException {
    DiskFile file = Disk.super.create(path, like);
    numbers.put(file, numbers.size());
    note("create", numbers.get(file), new byte[0], path, path);
    return file;
  }

  @Override
  public void write(DiskFile file, byte[] bytes, int from, int count) throws IOException {
    Disk.super.write(file, bytes, from, count);
    note("write", numbers.get(file), Arrays.copyOfRange(bytes, from, from + count), null, null);
  }

  @Override
  public void force(DiskFile file) throws IOException {
    Disk.super.force(file);
    note("force", numbers.get(file), new byte[0], null, null);
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    Disk.super.move(from, to);
    note("move", -1, new byte[0], from, to);
  }

  @Override
  public void delete(Path file) throws IOException {
    Disk.super.delete(file);
    note("delete", -1, new byte[0], file, file);
  }

  @Override
  public void forceFolder(Path folder) {
    Disk.super.forceFolder(folder);
    note("folder", -1, new byte[0], folder, folder);
  }

  /** Returns how many steps there were. */
  public synchronized int steps() {
    return steps.size();
  }

  /** Returns the steps in words, for whom a test fails. */
  public synchronized String told() {
    StringBuilder told = new StringBuilder();
    steps.forEach(step -> told.append(step.what()).append(' ').append(step.to()).append('\n'));
    return told.toString();
  }

  /** Returns all that may stand on the disk if the power goes after some steps, file by file. */
  public synchronized List<Map<Path, byte[]>> left(int after) {
    List<Step> names = new ArrayList<>();
    int settled = 0;
    Map<Integer, ByteArrayOutputStream> written = new HashMap<>();
    Map<Integer, Integer> forced = new HashMap<>();
    for (Step step : steps.subList(0, after)) {
      switch (step.what()) {
        case "write" ->
            written
                .computeIfAbsent(step.file(), any -> new ByteArrayOutputStream())
                .writeBytes(step.bytes());
        case "force" ->
            forced.put(
                step.file(),
                written.containsKey(step.file()) ? written.get(step.file()).size() : 0);
        case "folder" -> settled = names.size();
        default -> names.add(step);
      }
    }
    List<Map<Path, byte[]>> all = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    int open = names.size() - settled;
    for (int which = 0; which < 1 << open; which++) {
      for (int part = 0; part <= 2; part++) {
        Map<Path, byte[]> files = new TreeMap<>(before);
        Map<Path, Integer> numbered = new HashMap<>();
        for (int i = 0; i < names.size(); i++) {
          if (i < settled || ((which >> (i - settled)) & 1) == 1) {
            apply(names.get(i), files, numbered, names.subList(0, i));
          }
        }
        for (Map.Entry<Path, Integer> each : numbered.entrySet()) {
          byte[] bytes =
              written.getOrDefault(each.getValue(), new ByteArrayOutputStream()).toByteArray();
          int sure = forced.getOrDefault(each.getValue(), 0);
          files.put(each.getKey(), Arrays.copyOf(bytes, sure + (bytes.length - sure) * part / 2));
        }
        StringBuilder key = new StringBuilder();
        files.forEach((path, bytes) -> key.append(path).append(Arrays.hashCode(bytes)));
        if (seen.add(key.toString())) {
          all.add(files);
        }
      }
    }
    return all;
  }

  private static void apply(
      Step step, Map<Path, byte[]> files, Map<Path, Integer> numbered, List<Step> earlier) {
    switch (step.what()) {
      case "create" -> numbered.put(step.to(), step.file());
      case "delete" -> {
        numbered.remove(step.to());
        files.remove(step.to());
      }
      default -> {
        for (Step each : earlier) {
          if (each.what().equals("create") && each.to().equals(step.from())) {
            numbered.remove(step.from());
            files.remove(step.from());
            numbered.put(step.to(), each.file());
          }
        }
      }
    }
  }
}
