package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.workbook.pack.PackSheet;
import zonewright.workbook.pack.PackSheets;

final class PackCommandTest {
  @TempDir private Path folder;

  @Test
  void theListNamesEverySheetAndWhomItIsFor() {
    CommandRun run = CommandRun.of("pack", "--list");

    assertThat(run.code()).isZero();
    for (PackSheet sheet : PackSheets.all()) {
      assertThat(run.out()).contains(sheet.word(), sheet.title(), sheet.about());
    }
  }

  @Test
  void theWholePackIsADesignFile() {
    String file = folder.resolve("pack.xlsx").toString();

    CommandRun written = CommandRun.of("pack", file);

    assertThat(written.code()).isZero();
    assertThat(written.out()).isEqualTo("Written: " + file + "\n");
    assertThat(CommandRun.of("calculate", file, "--csv").out())
        .isEqualTo(CommandRun.of("calculate", "--csv").out());
  }

  @Test
  void someSheetsAndAClientsCopyCanBeWritten() {
    String some = folder.resolve("some.xlsx").toString();
    String client = folder.resolve("client.xlsx").toString();

    assertThat(CommandRun.of("pack", some, "--sheets", "Cover").code()).isZero();
    assertThat(CommandRun.of("pack", client, "--client", "--sample", "campus-retrofit").code())
        .isZero();
    assertThat(CommandRun.of("calculate", client).code()).isZero();
  }

  @Test
  void aClientsCopyWithoutAProposalIsWrittenOnlyWhereNoneIsAskedFor() {
    Path client = folder.resolve("client.xlsx");

    CommandRun refused = CommandRun.of("pack", client.toString(), "--client");

    assertThat(refused.code()).isEqualTo(ExitCode.FOUND);
    assertThat(refused.err())
        .contains("The proposal cannot be made, so nothing was written.")
        .contains("There are no items and no extras to price yet.");
    assertThat(client).doesNotExist();
    assertThat(CommandRun.of("pack", client.toString(), "--client", "--sheets", "year").code())
        .isZero();
    assertThat(client).isNotEmptyFile();
  }

  @Test
  void aSheetThatDoesNotExistIsNamedWithTheNearestThatDoes() {
    CommandRun run =
        CommandRun.of("pack", folder.resolve("some.xlsx").toString(), "--sheets", "covr");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("There is no sheet “covr” to hand over; did you mean cover?");
  }

  @Test
  void whereToWriteMustBeSaid() {
    CommandRun run = CommandRun.of("pack");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("Say where to write the workbook");
  }
}
