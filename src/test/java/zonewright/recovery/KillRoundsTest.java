package zonewright.recovery;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.testing.Counts;

/** How much is lost, and in how many rounds, is told by {@link KillRounds} run by itself. */
class KillRoundsTest {
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
