package zonewright.recovery;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.sheet.BookSnapshot;
import zonewright.sheet.Schema;
import zonewright.testing.Counts;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;

/** How much is lost, and in how many rounds, is told by {@link KillRounds} run by itself. */
class KillRoundsTest {
  /**
   * Two records that both fit are left where a process is killed after what it brought back stands
   * in its own record and before it lets the other go. Copies that had the times of their copying
   * were in the other order, and such rounds, one or two in a hundred, were called not exact.
   */
  @Test
  void whatIsJudgedIsWhatTheNextProcessFinds(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("garden.xlsx");
    Design design = Demo.libraryGarden(UnitSystem.US);
    DesignFile.write(design, file);
    BookSnapshot base = DesignFile.read(file).design().book().snapshot();
    TypingSteps steps = new TypingSteps(Design.of(base), 1);
    List<String> marks = new ArrayList<>();
    for (int seconds : List.of(1, 2, 2)) {
      steps.next();
      marks.add(TypingSteps.mark(steps.design()));
      Path record = folder.resolve(".garden.xlsx.0000000" + marks.size() + ".unsaved");
      Files.writeString(record, record(file, base, steps.design()));
      Files.setLastModifiedTime(record, FileTime.from(1_000_000_000L + seconds, TimeUnit.SECONDS));
    }
    String found = TypingSteps.mark(TypingProcess.opened(file).design());
    assertThat(found).as("one of the two that are last").isIn(marks.subList(1, 3));
    Path copy = KillRounds.copyOf(file);
    assertThat(TypingSteps.mark(TypingProcess.opened(copy).design())).isEqualTo(found);
  }

  private static String record(Path file, BookSnapshot base, Design now) {
    UnsavedFile.Head head =
        new UnsavedFile.Head(
            "a-window",
            "garden",
            Optional.of(file),
            UnsavedFile.digest(file),
            "somebody",
            Instant.EPOCH,
            Map.of());
    Schema schema = now.book().schema();
    List<String> lines =
        new ArrayList<>(
            UnsavedChange.lines(schema, new BookSnapshot(base.system(), Map.of()), base));
    lines.add(UnsavedFile.BASE);
    return UnsavedFile.HEAD
        + "\n"
        + UnsavedFile.group(List.of(head.line()))
        + UnsavedFile.group(lines)
        + UnsavedFile.group(UnsavedChange.lines(schema, base, now.book().snapshot()));
  }

  @Test
  @Tag(Counts.LONG)
  void whatIsLeftOfAKilledProcessIsExactlyWhatThereWasAfterOneOfItsEdits(@TempDir Path folder)
      throws Exception {
    int kept = 0;
    try (KillRounds killing = new KillRounds(folder, 20261125)) {
      for (int i = 0; i < Counts.of(3, 200); i++) {
        KillRounds.Round round = killing.round();
        assertThat(round.same()).as("%s", round).isTrue();
        assertThat(round.exact()).as("%s", round).isTrue();
        kept += round.kept();
      }
    }
    assertThat(kept).as("edits that outlived their process").isPositive();
  }

  @Test
  @Tag(Counts.LONG)
  void ofTwoWindowsAtOneFileEachFindsWhatItTyped(@TempDir Path folder) throws Exception {
    TwoWindowRounds two = new TwoWindowRounds(folder, 20261127);
    int typed = 0;
    for (int i = 0; i < Counts.of(1, 100); i++) {
      TwoWindowRounds.Round round = two.round();
      assertThat(round.wrong()).as("%s", round).isEmpty();
      typed += round.typed();
    }
    assertThat(typed).as("edits of both").isPositive();
  }
}
