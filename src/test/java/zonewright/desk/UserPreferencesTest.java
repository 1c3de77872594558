package zonewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import zonewright.desk.part.UserPreferences;

class UserPreferencesTest {
  private final UserPreferences memory = new UserPreferences(new ForgottenPreferences());

  @Test
  void keepsTheLatestFilesFirstAndEachOnce() {
    memory.used(Path.of("one.xlsx"));
    memory.used(Path.of("two.xlsx"));
    memory.used(Path.of("one.xlsx"));

    assertThat(memory.recent())
        .extracting(path -> path.getFileName().toString())
        .containsExactly("one.xlsx", "two.xlsx");
  }

  @Test
  void forgetsTheOldestFiles() {
    IntStream.range(0, 20).forEach(i -> memory.used(Path.of(i + ".xlsx")));

    assertThat(memory.recent()).hasSize(8);
    assertThat(memory.recent().get(0)).hasFileName("19.xlsx");
  }

  @Test
  void givesWhatIsUsualWhereNothingIsKept() {
    assertThat(memory.number("width", 1400)).isEqualTo(1400);
    memory.keep("width", 900);
    assertThat(memory.number("width", 1400)).isEqualTo(900);
  }
}
