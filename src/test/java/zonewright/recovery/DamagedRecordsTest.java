package zonewright.recovery;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Schema;
import zonewright.testing.Counts;
import zonewright.units.UnitSystem;

/**
 * Damaged records, up to such as somebody made with right check sums: whatever is in them can be
 * offered, taken and taken back, and nothing is cleared away unseen.
 */
class DamagedRecordsTest {
  private static final List<String> ODD =
      List.of(
          "",
          "-1",
          "9223372036854775807",
          "9 9 9",
          "NaN",
          "F1e999",
          "X",
          "\\",
          "\t",
          "US",
          "zones");

  private final Design design = Demo.libraryGarden(UnitSystem.US);
  private final Schema schema = design.book().schema();
  private final BookSnapshot file = design.book().snapshot();
  private final Random random = new Random(20261127);

  @Test
  @Tag(Counts.LONG)
  void whateverIsInARecordIsOfferedAndNothingIsThrown(@TempDir Path folder) throws IOException {
    Path record = folder.resolve(".garden.xlsx.12345678.unsaved");
    List<List<String>> groups = groups(folder);
    List<String> wrong = new ArrayList<>();
    int given = 0;
    int kept = 0;
    for (int i = 0; i < Counts.of(60, 2000); i++) {
      Files.write(record, damaged(groups));
      try {
        UnsavedFile.around(folder.resolve("garden.xlsx"), "", folder);
        UnsavedFile.Found found = UnsavedFile.read(record, schema).orElseThrow();
        if (found.book().isPresent()) {
          given++;
          taken(found);
        } else if (!found.untouched()) {
          kept++;
        }
      } catch (RuntimeException | AssertionError escaped) {
        wrong.add("record " + i + ": " + escaped);
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(given).as("records that gave something").isPositive();
    assertThat(kept).as("records kept as they are").isPositive();
  }

  /** As the window does: all that differs is taken, and taken back. */
  private void taken(UnsavedFile.Found found) {
    Design open = Design.of(file);
    LeftWork work =
        new LeftWork(
            open.book(), file, found.at("", file).or(found::base), found.book().orElseThrow());
    open.book()
        .perform(
            work.taken(
                IntStream.range(0, work.items().size()).boxed().collect(Collectors.toSet())));
    open.findings();
    open.book().undo();
    assertThat(open.book().snapshot().sameEntries(file)).isTrue();
  }

  private List<List<String>> groups(Path folder) {
    UnsavedFile.Head head =
        new UnsavedFile.Head(
            "12345678-some-window",
            "garden",
            Optional.of(folder.resolve("garden.xlsx")),
            "",
            "somebody on a computer",
            Instant.EPOCH,
            Map.of());
    List<String> base =
        new ArrayList<>(
            UnsavedChange.lines(schema, new BookSnapshot(UnitSystem.US, Map.of()), file));
    base.add(UnsavedFile.BASE);
    List<List<String>> groups = new ArrayList<>(List.of(List.of(head.line()), base));
    TypingSteps steps = new TypingSteps(design, 5);
    for (int i = 0; i < 10; i++) {
      BookSnapshot before = design.book().snapshot();
      steps.next();
      groups.add(UnsavedChange.lines(schema, before, design.book().snapshot()));
    }
    return groups;
  }

  private byte[] damaged(List<List<String>> whole) {
    List<List<String>> groups = new ArrayList<>(whole);
    for (int i = random.nextInt(4); i > 0; i--) {
      int at = random.nextInt(groups.size());
      switch (random.nextInt(4)) {
        case 0 -> groups.remove(at);
        case 1 -> groups.add(random.nextInt(groups.size()), groups.get(at));
        default -> groups.set(at, otherwise(groups.get(at)));
      }
      if (groups.isEmpty()) {
        groups.add(List.of());
      }
    }
    String text =
        UnsavedFile.HEAD
            + "\n"
            + groups.stream().map(UnsavedFile::group).collect(Collectors.joining());
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (random.nextInt(3) == 0) {
      bytes = Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
    }
    for (int i = random.nextInt(5) - 2; i > 0 && bytes.length > 0; i--) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  /** The same group with something else in one of its lines, and the check sum of that. */
  private List<String> otherwise(List<String> group) {
    List<String> lines = new ArrayList<>(group);
    if (lines.isEmpty()) {
      return lines;
    }
    if (random.nextInt(4) == 0) {
      Collections.shuffle(lines, random);
      return lines;
    }
    int at = random.nextInt(lines.size());
    List<String> parts = new ArrayList<>(List.of(lines.get(at).split("\t", -1)));
    int part = random.nextInt(parts.size());
    switch (random.nextInt(3)) {
      case 0 -> parts.remove(part);
      case 1 -> parts.add(part, ODD.get(random.nextInt(ODD.size())));
      default -> parts.set(part, ODD.get(random.nextInt(ODD.size())));
    }
    lines.set(at, String.join("\t", parts));
    return lines;
  }
}
