package zonewright.recovery;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How much is lost, and in how many rounds, is told by {@link KillRounds} run by itself. */
class KillRoundsTest {
  @Test
  void whatIsLeftOfAKilledProcessIsExactlyWhatThereWasAfterOneOfItsEdits(@TempDir Path folder)
      throws Exception {
    try (KillRounds killing = new KillRounds(folder, 20261125)) {
      for (int i = 0; i < 4; i++) {
        KillRounds.Round round = killing.round();
        assertThat(round.exact()).as("%s", round).isTrue();
      }
    }
  }
}
