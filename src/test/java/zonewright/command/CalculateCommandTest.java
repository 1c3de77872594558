package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Design;
import zonewright.design.Facts;
import zonewright.emitters.Emitters;
import zonewright.soil.Soils;
import zonewright.trade.Sheets;
import zonewright.units.UnitSystem;

final class CalculateCommandTest {
  @TempDir private Path folder;

  private Path saved(String zone, String area) {
    Design design = Design.blank(UnitSystem.US);
    design.book().perform(design.edits().inserted(Sheets.ZONES, 0, 1));
    design.book().perform(design.edits().typed(Facts.ZONE_NAME.reference(), 0, zone));
    design.book().perform(design.edits().typed(Emitters.AREA.reference(), 0, area));
    design.book().perform(design.edits().typed(Emitters.ZONE_FLOW.reference(), 0, "9.6 gpm"));
    design.book().perform(design.edits().typed(Soils.SLOPE.reference(), 0, "4 %"));
    Path file = folder.resolve("garden.xlsx");
    DesignFiles.save(design, file, Optional.empty(), new PrintWriter(Writer.nullWriter()));
    return file;
  }

  private static List<CSVRecord> table(CommandRun run) throws IOException {
    return CSVFormat.RFC4180.parse(new StringReader(run.out())).getRecords();
  }

  /** Ohio State University Extension, Bulletin 912, step 11: 0.64 in/h. */
  @Test
  void aSavedDesignIsCalculatedAndPrinted() {
    CommandRun run =
        CommandRun.of(
            "calculate", saved("1", "1444 ft2").toString(), "--columns", "zone, AREA,Rate by area");

    assertThat(run.code()).isZero();
    assertThat(run.out().lines().toList()).last().asString().matches("1 +1,444 +0\\.64");
  }

  @Test
  void linesOfATableAreAligned() {
    CommandRun run = CommandRun.of("calculate", "--columns", "Zone,Where,Area,Emitter,Slope");

    List<String> lines = run.out().lines().toList();
    int rule = 0;
    while (!lines.get(rule).startsWith("─")) {
      rule++;
    }
    int end = lines.get(rule).length();
    assertThat(lines.subList(rule + 1, lines.size()))
        .hasSizeGreaterThan(5)
        .allMatch(line -> line.length() == end);
  }

  @Test
  void allColumnsOfTheSheetAreInTheCsvWithUnitsAndNumbersInFull() throws IOException {
    CommandRun run = CommandRun.of("calculate", saved("1", "1444").toString(), "--csv");

    List<CSVRecord> records = table(run);
    List<String> headings = records.get(0).toList();
    assertThat(records).hasSize(2);
    assertThat(headings).contains("Area (ft²)", "Slope (%)", "Precipitation rate (in/h)");
    assertThat(Double.parseDouble(records.get(1).get(headings.indexOf("Rate by area (in/h)"))))
        .isBetween(0.6398, 0.6400);
    assertThat(records.get(1).get(headings.indexOf("Slope (%)"))).isEqualTo("4");
    assertThat(records.get(1).get(headings.indexOf("Longest cycle (min)"))).isEmpty();
    assertThat(run.err()).contains("have no number; the command findings says why");
  }

  @Test
  void unitsCanBeSwitchedOnTheWay() throws IOException {
    CommandRun run =
        CommandRun.of(
            "calculate",
            saved("1", "1000").toString(),
            "--csv",
            "--units",
            "si",
            "--columns",
            "Area");

    List<CSVRecord> records = table(run);
    assertThat(records.get(0).get(0)).isEqualTo("Area (m²)");
    assertThat(Double.parseDouble(records.get(1).get(0))).isEqualTo(92.90304);
  }

  @Test
  void noCellOfTheCsvStartsAFormula() throws IOException {
    String nasty = "=HYPERLINK(\"http://example.org\",\"1\")";
    CommandRun run =
        CommandRun.of("calculate", saved(nasty, "900").toString(), "--csv", "--columns", "Zone");

    assertThat(table(run).get(1).get(0)).isEqualTo("'" + nasty);
  }

  @Test
  void anUnknownColumnIsToldWithTheNearestNames() {
    CommandRun run = CommandRun.of("calculate", "--columns", "Zone,Area,Run time of a day or week");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("There is no column “Run time of a day or week”; did you mean one of these?")
        .contains("  Run time a week  ")
        .contains("  Run time a watering day  ");
  }

  @Test
  void anUnknownSheetIsToldWithTheNearestName() {
    CommandRun run = CommandRun.of("calculate", "--sheet", "zonse");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("did you mean “Zones”?");
  }

  @Test
  void everySheetCanBePrintedBothWays() {
    for (var table : zonewright.design.IrrigationSheets.schema().tables()) {
      assertThat(CommandRun.of("calculate", "--sheet", table.title()).code()).isZero();
      assertThat(CommandRun.of("calculate", "--sheet", table.title(), "--csv").code()).isZero();
    }
  }

  @Test
  void aFileThatIsNotThereIsASentence() {
    CommandRun run = CommandRun.of("calculate", folder.resolve("none.xlsx").toString());

    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).startsWith("There is no file ").hasLineCount(1);
  }

  @Test
  void aFileThatIsNoWorkbookIsASentence() throws IOException {
    Path file = Files.writeString(folder.resolve("letter.xlsx"), "Dear Sir or Madam");

    CommandRun run = CommandRun.of("calculate", file.toString());

    assertThat(run.code()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).hasLineCount(1).doesNotContain("Exception");
  }

  @Test
  void aFolderIsASentence() {
    CommandRun run = CommandRun.of("calculate", folder.toString());

    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).hasLineCount(1).doesNotContain("Exception");
  }
}
