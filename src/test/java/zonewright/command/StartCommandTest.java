package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine.Model.UsageMessageSpec;

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
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    String all = CommandRun.of("--help").out();
    new Program(nowhere, nowhere, null)
        .commands()
        .forEach(
            (name, command) -> {
              UsageMessageSpec said = command.getCommandSpec().usageMessage();
              Stream.of(said.header(), said.description(), said.footer())
                  .flatMap(Arrays::stream)
                  .forEach(
                      line ->
                          assertThatCode(() -> line.formatted())
                              .as(line)
                              .doesNotThrowAnyException());
              assertThat(CommandRun.of(name, "--help").out())
                  .startsWith(said.header()[0])
                  .contains("Usage: zonewright " + name)
                  .containsPattern("\nExamples?:");
              assertThat(all).contains("  " + name + " ");
            });
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
