package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class StartCommandTest {
  @Test
  void withADisplayTheWindowOpensOnTheDemo() {
    CommandRun run = CommandRun.onDesktop();

    assertThat(run.code()).isZero();
    assertThat(run.opened()).containsExactly(Optional.empty());
    assertThat(run.out()).isEmpty();
  }

  @Test
  void aWorkbookAloneOpensInTheWindow() {
    CommandRun run = CommandRun.onDesktop("garden.XLSX");

    assertThat(run.opened()).containsExactly(Optional.of(Path.of("garden.XLSX")));
  }

  @Test
  void withoutADisplayTheZonesArePrintedAndTheDemoIsWritten() {
    CommandRun run = CommandRun.of();

    assertThat(run.code()).isZero();
    assertThat(run.opened()).isEmpty();
    assertThat(run.out())
        .contains("invented", "Reading lawn, north half", "Cycles")
        .contains("Written: " + Path.of("target", "library-garden.xlsx"));
    assertThat(run.out().lines().toList()).last().asString().contains("desktop", "window");
    assertThat(Path.of("target", "library-garden.xlsx")).isNotEmptyFile();
  }

  @Test
  void withoutADisplayTheZonesOfAFileArePrinted(@TempDir Path folder) {
    String file = folder.resolve("mine.xlsx").toString();
    CommandRun.of("write", file);

    CommandRun run = CommandRun.of(file);

    assertThat(run.code()).isZero();
    assertThat(run.out()).startsWith("The zones of " + file).doesNotContain("Written");
    assertThat(Files.exists(folder.resolve("target"))).isFalse();
  }

  @Test
  void aMistypedCommandIsToldWithTheNearest() {
    CommandRun run = CommandRun.onDesktop("calculat");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.opened()).isEmpty();
    assertThat(run.err()).contains("did you mean “calculate”?");
  }

  @Test
  void everyCommandExplainsItself() {
    for (String command : new String[] {"calculate", "findings", "write", "answer", "columns"}) {
      CommandRun run = CommandRun.of(command, "--help");

      assertThat(run.code()).isZero();
      assertThat(run.out()).contains("Usage: zonewright " + command, "Examples:");
      assertThat(CommandRun.of("--help").out()).contains("  " + command + " ");
    }
  }

  @Test
  void anUnknownOptionIsASentenceAndAPointerToHelp() {
    CommandRun run = CommandRun.of("calculate", "--unit", "si");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err().lines())
        .containsExactly(
            "There is no option “--unit”; did you mean --units?",
            "How it works: zonewright calculate --help");
  }

  @Test
  void aMissingNameIsASentence() {
    assertThat(CommandRun.of("answer").err()).startsWith("Missing: COLUMN.");
  }
}
