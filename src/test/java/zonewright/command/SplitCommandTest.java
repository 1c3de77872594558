package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.pipes.Supply;
import zonewright.units.UnitSystem;

final class SplitCommandTest {
  @TempDir private Path folder;

  private String gardenWith(String availableFlow) {
    Design garden = Demo.libraryGarden(UnitSystem.US);
    garden
        .book()
        .perform(garden.edits().typed(Supply.AVAILABLE_FLOW.reference(), 0, availableFlow));
    Path file = folder.resolve("garden.xlsx");
    DesignFiles.save(garden, file, Optional.empty(), new PrintWriter(Writer.nullWriter()));
    return file.toString();
  }

  @Test
  void zonesThatDrawTooMuchBecomeAsManyAsTheyNeed() {
    String file = gardenWith("20 gpm");
    String target = folder.resolve("split.xlsx").toString();

    CommandRun run = CommandRun.of("split", target, "--from", file);

    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("zone 1a: 18.6 gpm", "zone 1b: 18.6 gpm", "zone 4b: 15 gpm")
        .endsWith("Written: " + target + "\n");
    assertThat(CommandRun.of("findings", target).out()).doesNotContain("the supply gives");
  }

  @Test
  void whatAPersonAddedToTheFileGoesAlong() throws IOException {
    Path file = Path.of(gardenWith("20 gpm"));
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file));
        OutputStream stream = Files.newOutputStream(file)) {
      workbook.createSheet("My sums").createRow(0).createCell(0).setCellFormula("1+1");
      workbook.write(stream);
    }
    Path target = folder.resolve("split.xlsx");
    Path retrofit = folder.resolve("retrofit.xlsx");

    assertThat(CommandRun.of("split", target.toString(), "--from", file.toString()).code())
        .isZero();
    CommandRun.of("retrofit", retrofit.toString(), "--as-found", "--from", target.toString());

    for (Path each : List.of(target, retrofit)) {
      try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(each))) {
        assertThat(workbook.getSheet("My sums").getRow(0).getCell(0).getCellFormula())
            .isEqualTo("1+1");
      }
    }
  }

  @Test
  void whereNothingDrawsTooMuchItSaysSoAndWritesTheDesignAsItIs() {
    String file = gardenWith("60 gpm");
    String target = folder.resolve("split.xlsx").toString();

    CommandRun run = CommandRun.of("split", target, "--from", file);

    assertThat(run.code()).isZero();
    assertThat(run.out()).startsWith("No zone is known to need more than one valve.");
    assertThat(CommandRun.of("calculate", target, "--csv").out())
        .isEqualTo(CommandRun.of("calculate", file, "--csv").out());
  }

  @Test
  void aFileIsNotWrittenOverUnlessAsked() {
    String file = gardenWith("20 gpm");

    CommandRun run = CommandRun.of("split", file, "--from", file);

    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).contains("--replace");
  }
}
