package zonewright.recovery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Entry;
import zonewright.sheet.Schema;
import zonewright.testing.Counts;
import zonewright.units.UnitSystem;

class RecordTextTest {
  @Property(tries = 300)
  void everyTextComesBack(@ForAll String text) {
    assertThat(EntryText.plain(EntryText.escaped(text))).isEqualTo(text);
    assertThat(EntryText.escaped(text)).doesNotContain("\t", "\n", "\r");
  }

  @Property(tries = 300)
  void everyEntryComesBack(@ForAll String text, @ForAll String problem, @ForAll double number) {
    List<Entry> entries =
        new ArrayList<>(List.of(Entry.BLANK, new Entry.Unreadable(text, problem)));
    if (Double.isFinite(number)) {
      entries.add(new Entry.Figure(number));
    }
    if (!text.isBlank()) {
      entries.add(new Entry.Words(text));
    }
    for (Entry entry : entries) {
      assertThat(EntryText.read(EntryText.of(entry))).isEqualTo(entry);
    }
  }

  @Property(tries = 30)
  void whateverIsTypedTheDifferencesLeadThere(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 25) int edits) {
    Design design = Demo.libraryGarden(UnitSystem.US);
    Schema schema = design.book().schema();
    Rebuilt rebuilt = new Rebuilt(schema);
    BookSnapshot before = new BookSnapshot(UnitSystem.US, Map.of());
    TypingSteps steps = new TypingSteps(design, seed);
    for (int i = 0; i < edits; i++) {
      BookSnapshot now = design.book().snapshot();
      UnsavedChange.lines(schema, before, now).forEach(rebuilt::take);
      assertThat(rebuilt.snapshot().orElseThrow().sameEntries(now)).isTrue();
      before = now;
      steps.next();
    }
  }

  @Test
  void whatWasCutShortIsLeftOutAndTheRestIsRead(@TempDir Path folder) throws IOException {
    Design design = Demo.libraryGarden(UnitSystem.SI);
    Schema schema = design.book().schema();
    BookSnapshot first = design.book().snapshot();
    List<String> start =
        UnsavedChange.lines(schema, new BookSnapshot(UnitSystem.SI, Map.of()), first);
    new TypingSteps(design, 7).next();
    List<String> then = UnsavedChange.lines(schema, first, design.book().snapshot());
    String whole = head(folder) + UnsavedFile.group(start) + UnsavedFile.group(then);
    Path file = folder.resolve(".garden.xlsx.12345678.unsaved");
    int afterStart = whole.length() - UnsavedFile.group(then).length();
    for (int end = afterStart; end < whole.length() - 1; end++) {
      Files.writeString(file, whole.substring(0, end), StandardCharsets.UTF_8);
      UnsavedFile.Found found = UnsavedFile.read(file, schema).orElseThrow();
      assertThat(found.book().orElseThrow().sameEntries(first)).isTrue();
      assertThat(found.whole()).isEqualTo(end <= afterStart + 1);
    }
    Files.writeString(file, whole, StandardCharsets.UTF_8);
    UnsavedFile.Found found = UnsavedFile.read(file, schema).orElseThrow();
    assertThat(found.whole()).isTrue();
    assertThat(found.book().orElseThrow().sameEntries(design.book().snapshot())).isTrue();
    assertThat(found.head().orElseThrow().design())
        .contains(folder.resolve("garden.xlsx").toAbsolutePath());
    assertThat(UnsavedFile.around(folder.resolve("garden.xlsx"), "", folder).left()).contains(file);
  }

  private static String head(Path folder) {
    UnsavedFile.Head head =
        new UnsavedFile.Head(
            "12345678-some-window",
            "garden",
            Optional.of(folder.resolve("garden.xlsx")),
            "",
            "somebody on a computer",
            Instant.EPOCH,
            Map.of());
    return UnsavedFile.HEAD + "\n" + UnsavedFile.group(List.of(head.line()));
  }

  @Test
  void aNumberThatNobodyWroteIsNone() {
    for (String text : List.of("F12d", "F0x1p3", "F1e999", "FNaN", "F", "F 1.0", "F1.0f")) {
      assertThatThrownBy(() -> EntryText.read(text))
          .as(text)
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  /** Every whole group comes back, whatever befell the others; nothing ever throws. */
  @Test
  @Tag(Counts.LONG)
  void ofADamagedRecordAllWholeGroupsAreGivenAndThatItIsDamagedIsKnown(@TempDir Path folder)
      throws IOException {
    Design design = Demo.libraryGarden(UnitSystem.US);
    Schema schema = design.book().schema();
    BookSnapshot before = new BookSnapshot(UnitSystem.US, Map.of());
    TypingSteps steps = new TypingSteps(design, 11);
    List<String> groups = new ArrayList<>(List.of(head(folder)));
    for (int i = 0; i < 12; i++) {
      BookSnapshot now = design.book().snapshot();
      groups.add(UnsavedFile.group(UnsavedChange.lines(schema, before, now)));
      before = now;
      steps.next();
    }
    byte[] whole = String.join("", groups).getBytes(StandardCharsets.UTF_8);
    int first = (groups.get(0) + groups.get(1)).getBytes(StandardCharsets.UTF_8).length;
    Path file = folder.resolve(".garden.xlsx.12345678.unsaved");
    Random random = new Random(3);
    for (int i = 0; i < Counts.of(100, 2000); i++) {
      byte[] damaged = whole.clone();
      int at = first + random.nextInt(whole.length - first);
      int length = 1 + random.nextInt(random.nextBoolean() ? 3 : 400);
      for (int j = at; j < Math.min(whole.length, at + length); j++) {
        byte other = (byte) (damaged[j] + 1 + random.nextInt(255));
        damaged[j] =
            other == '\r' || other == '\n' ? (byte) 0 : other; // one end of a line for another
      }
      boolean cut = random.nextInt(4) == 0;
      Files.write(file, cut ? Arrays.copyOf(damaged, at) : damaged);
      Rebuilt expected = new Rebuilt(schema);
      int begin = 0;
      for (String group : groups) {
        int end = begin + group.getBytes(StandardCharsets.UTF_8).length;
        if (end <= at + (cut ? 1 : 0) || (!cut && begin >= at + length)) {
          expected.takeAll(group.lines().filter(RecordTextTest::inside).toList());
        }
        begin = end;
      }
      UnsavedFile.Found found = UnsavedFile.read(file, schema).orElseThrow();
      if (!cut) { // one cut between two groups cannot be told from one that ended there
        assertThat(found.whole()).as("damaged at %s", at).isFalse();
      }
      assertThat(found.book().orElseThrow().sameEntries(expected.snapshot().orElseThrow()))
          .as("damage of %s at %s", length, at)
          .isTrue();
    }
  }

  /** Says whether a line is one between the first and the last of a group. */
  private static boolean inside(String line) {
    return !line.isEmpty()
        && !line.equals(UnsavedFile.HEAD)
        && !line.equals(UnsavedFile.OPENING)
        && !line.startsWith("end\t");
  }

  @Test
  void whatIsNoRecordIsNone(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("x.unsaved");
    Schema schema = Design.blank(UnitSystem.US).book().schema();
    assertThat(UnsavedFile.read(file, schema)).isEmpty();
    for (String text : List.of("", "Dear gardener", "zonewright unsaved 1\t1\t2\tx\t\nend\t0\n")) {
      Files.writeString(file, text, StandardCharsets.UTF_8);
      UnsavedFile.Found found = UnsavedFile.read(file, schema).orElseThrow();
      assertThat(found.book()).isEmpty();
      assertThat(found.untouched()).isEqualTo(text.isEmpty());
    }
  }
}
