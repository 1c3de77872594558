package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.Writer;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.emitters.Emitters;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

final class FindingsCommandTest {
  @TempDir private Path folder;

  private Path withLetters() {
    Design design = Design.blank(UnitSystem.US);
    design.book().perform(design.edits().inserted(Sheets.ZONES, 0, 1));
    design.book().perform(design.edits().typed(Emitters.AREA.reference(), 0, "large"));
    Path file = folder.resolve("garden.xlsx");
    DesignFiles.save(design, file, Optional.empty(), new PrintWriter(Writer.nullWriter()));
    return file;
  }

  @Test
  void lettersInANumberAreWrongAndBlanksAreMissing() {
    CommandRun run = CommandRun.of("findings", withLetters().toString());

    assertThat(run.code()).isZero();
    assertThat(run.firstLine()).startsWith("wrong").contains("Area: “large” is not a number");
    assertThat(run.out()).contains("missing  zone 1: Soil is blank");
  }

  @Test
  void aScriptCanFailOnTheKindItChooses() {
    String file = withLetters().toString();

    assertThat(CommandRun.of("findings", file, "--fail-on", "wrong").code()).isEqualTo(1);
    assertThat(CommandRun.of("findings", file, "--fail-on", "note").code()).isEqualTo(1);
    assertThat(CommandRun.of("findings", "--fail-on", "wrong").code()).isZero();
    assertThat(CommandRun.of("findings", "--fail-on", "check").code()).isEqualTo(1);
  }

  @Test
  void theCsvNamesSheetRowAndColumn() throws IOException {
    CommandRun run = CommandRun.of("findings", withLetters().toString(), "--csv");

    List<CSVRecord> records = CSVFormat.RFC4180.parse(new StringReader(run.out())).getRecords();
    assertThat(records.get(1).toList()).startsWith("wrong", "Zones", "zone 1", "Area");
  }

  @Test
  void anUnknownKindIsASentence() {
    CommandRun run = CommandRun.of("findings", "--fail-on", "panic");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).startsWith("“panic” is no kind of finding; write wrong, missing, check");
  }
}
