package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class WriteCommandTest {
  @TempDir private Path folder;

  @Test
  void theDemoCanBeWrittenAndCalculatedAgain() {
    String file = folder.resolve("demo.xlsx").toString();

    CommandRun written = CommandRun.of("write", file);
    CommandRun read = CommandRun.of("calculate", file, "--csv");

    assertThat(written.code()).isZero();
    assertThat(written.out()).isEqualTo("Written: " + file + "\n");
    assertThat(read.out()).isEqualTo(CommandRun.of("calculate", "--csv").out());
  }

  @Test
  void aDesignCanBeWrittenInTheOtherUnits() {
    String us = folder.resolve("us.xlsx").toString();
    String si = folder.resolve("si.xlsx").toString();
    CommandRun.of("write", us);

    CommandRun run = CommandRun.of("write", si, "--from", us, "--units", "si");

    assertThat(run.code()).isZero();
    assertThat(CommandRun.of("calculate", si, "--csv", "--columns", "Area").firstLine())
        .isEqualTo("Area (m²)");
  }

  @Test
  void aFileIsNotWrittenOverUnlessAsked() throws IOException {
    Path file = Files.writeString(folder.resolve("mine.xlsx"), "mine");

    CommandRun refused = CommandRun.of("write", file.toString());
    String kept = Files.readString(file);
    CommandRun replaced = CommandRun.of("write", file.toString(), "--replace");

    assertThat(refused.code()).isEqualTo(3);
    assertThat(refused.err()).contains("is there already; add --replace");
    assertThat(kept).isEqualTo("mine");
    assertThat(replaced.code()).isZero();
    assertThat(CommandRun.of("calculate", file.toString()).code()).isZero();
  }

  @Test
  void anotherEndingIsRefused() {
    CommandRun run = CommandRun.of("write", folder.resolve("demo.txt").toString());

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).startsWith("A workbook's name ends in .xlsx");
  }

  @Test
  void aFolderThatIsNotThereIsASentence() {
    CommandRun run = CommandRun.of("write", folder.resolve("no/where.xlsx").toString());

    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("There is no folder").doesNotContain("Exception");
  }
}
