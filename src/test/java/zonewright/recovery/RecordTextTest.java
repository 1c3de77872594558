package zonewright.recovery;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.sheet.Blueprint;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Entry;
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
    Blueprint blueprint = design.book().blueprint();
    Rebuilt rebuilt = new Rebuilt(blueprint);
    BookSnapshot before = new BookSnapshot(UnitSystem.US, Map.of());
    TypingSteps steps = new TypingSteps(design, seed);
    for (int i = 0; i < edits; i++) {
      BookSnapshot now = design.book().snapshot();
      Difference.lines(blueprint, before, now).forEach(rebuilt::take);
      assertThat(rebuilt.snapshot().orElseThrow().sameEntries(now)).isTrue();
      before = now;
      steps.next();
    }
  }

  @Test
  void whatWasCutShortIsLeftOutAndTheRestIsRead(@TempDir Path folder) throws IOException {
    Design design = Demo.libraryGarden(UnitSystem.SI);
    Blueprint blueprint = design.book().blueprint();
    BookSnapshot first = design.book().snapshot();
    List<String> start =
        Difference.lines(blueprint, new BookSnapshot(UnitSystem.SI, Map.of()), first);
    new TypingSteps(design, 7).next();
    List<String> then = Difference.lines(blueprint, first, design.book().snapshot());
    String whole =
        UnsavedFile.head("garden", Optional.of(folder.resolve("garden.xlsx")))
            + "\n"
            + String.join("\n", start)
            + "\n"
            + UnsavedFile.closing(start)
            + "\n"
            + String.join("\n", then)
            + "\n"
            + UnsavedFile.closing(then)
            + "\n";
    Path file = folder.resolve(".garden.xlsx.unsaved");
    int afterStart =
        whole.indexOf(UnsavedFile.closing(start)) + UnsavedFile.closing(start).length();
    for (int end = afterStart + 1; end < whole.length() - 1; end++) {
      Files.writeString(file, whole.substring(0, end), StandardCharsets.UTF_8);
      assertThat(UnsavedFile.read(file, blueprint).orElseThrow().book().sameEntries(first))
          .isTrue();
    }
    Files.writeString(file, whole, StandardCharsets.UTF_8);
    UnsavedFile.Found found = UnsavedFile.read(file, blueprint).orElseThrow();
    assertThat(found.book().sameEntries(design.book().snapshot())).isTrue();
    assertThat(found.design()).contains(folder.resolve("garden.xlsx").toAbsolutePath());
    assertThat(UnsavedFile.inUseElsewhere(file)).isFalse();
    assertThat(UnsavedFile.isOurs(file)).isTrue();
    assertThat(UnsavedFile.leftOver(folder)).isEmpty();
  }

  @Test
  void whatIsNoRecordIsNone(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("x.unsaved");
    Blueprint blueprint = Design.blank(UnitSystem.US).book().blueprint();
    assertThat(UnsavedFile.read(file, blueprint)).isEmpty();
    for (String text : List.of("", "Dear gardener", "zonewright unsaved 1\t1\t2\tx\t\nend\t0\n")) {
      Files.writeString(file, text, StandardCharsets.UTF_8);
      assertThat(UnsavedFile.read(file, blueprint)).isEmpty();
    }
  }
}
