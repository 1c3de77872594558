package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.design.Demo;
import zonewright.design.Design;
import zonewright.design.OwnColumnRows;
import zonewright.units.UnitSystem;
import zonewright.workbook.DesignFile;

/** Columns of one's own, by command. */
class ColumnCommandTest {
  @TempDir private Path folder;

  private CommandRun add(Path into, String kind, String equation) {
    return CommandRun.of(
        "column",
        "--sample",
        "homework",
        "--add",
        "Share of flow",
        "--kind",
        kind,
        "--equation",
        equation,
        "--at-most",
        "5 %",
        "--note",
        "Split the zone",
        "--into",
        into.toString());
  }

  @Test
  void aColumnIsAddedPrintedFoundChangedAndTakenAway() {
    Path file = folder.resolve("own.xlsx");
    CommandRun added = add(file, "share", "Zone flow / SUM(Zone flow)");
    assertThat(added.code()).as(added.err()).isZero();
    assertThat(added.out()).isEqualTo("Written: " + file + "\n");

    String name = file.toString();
    assertThat(CommandRun.of("column", name).out())
        .isEqualTo("Zones: Share of flow (share) = Zone flow / SUM(Zone flow)\n  at most 5 %\n");
    assertThat(CommandRun.of("calculate", name, "--columns", "Zone,Share of flow", "--csv").out())
        .startsWith("Zone,Share of flow");
    assertThat(CommandRun.of("findings", name).out())
        .contains("more than your limit of 5 %", "Split the zone");

    CommandRun changed =
        CommandRun.of("column", name, "--change", "share of FLOW", "--name", "Part", "--replace");
    assertThat(changed.code()).as(changed.err()).isZero();
    assertThat(CommandRun.of("column", name).out()).startsWith("Zones: Part (share)");
    CommandRun gone = CommandRun.of("column", name, "--take-away", "Part", "--replace");
    assertThat(gone.code()).as(gone.err()).isZero();
    assertThat(CommandRun.of("column", name).out())
        .isEqualTo("The design has no columns of your own.\n");
  }

  @Test
  void whatIsWrongIsToldWithItsPlaceAndNothingIsWritten() {
    Path file = folder.resolve("own.xlsx");
    CommandRun run = add(file, "share", "Zone flow / SUM(Zone flo)");
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err())
        .contains(
            "There is no column “Zone flo” here.",
            "  Zone flow / SUM(Zone flo)\n                  ^^^^^^^^\n");
    assertThat(file).doesNotExist();
    assertThat(add(file, "shares", "1").err())
        .contains("There is no kind “shares”; did you mean share");
    assertThat(add(file, "flow", "1").err()).contains("write its unit");
    CommandRun limit =
        CommandRun.of(
            "column",
            "--add",
            "Half",
            "--kind",
            "area",
            "--equation",
            "Area / 2",
            "--at-most",
            "2 * Aera",
            "--into",
            file.toString());
    assertThat(limit.err()).contains("There is no column “Aera” here.", "  2 * Aera\n      ^^^^\n");
    CommandRun what = CommandRun.of("column", "--equation", "1");
    assertThat(what.err()).contains("Say which column is meant, with --add NAME or --change NAME.");
  }

  @Test
  void columnsOfOnesOwnCanBeListedAndAskedForWithTheirWorking() throws Exception {
    Path file = folder.resolve("own.xlsx");
    Design design = Demo.libraryGarden(UnitSystem.US);
    OwnColumnRows.addSome(design);
    DesignFile.write(design, file);
    CommandRun listed = CommandRun.of("columns", "Cost a year", "--from", file.toString());
    assertThat(listed.code()).isZero();
    assertThat(listed.out())
        .startsWith("Zones\n")
        .contains("Cost a year: calculated", "Equation: = Water price × Volume a year ÷ 1 gal");
    CommandRun all = CommandRun.of("columns", "--sheet", "zones", "--from", file.toString());
    assertThat(all.out()).contains("\nCost a year: ", "\nHalf runs (min): ");
    CommandRun answer =
        CommandRun.of(
            "answer",
            "Cost a year",
            "Site: Water price=0.02",
            "Volume a year=40000 gal",
            "--from",
            file.toString());
    assertThat(answer.err()).isEmpty();
    assertThat(answer.out()).contains("800").contains("Water price × Volume a year ÷ 1 gal");
    CommandRun turned =
        CommandRun.of(
            "answer",
            "Volume a year",
            "Site: Water price=0.02",
            "Cost a year=800",
            "--from",
            file.toString());
    assertThat(turned.out()).contains("40,000 gal");
    assertThat(CommandRun.of("answer", "Cost a year").err()).contains("There is no column");
  }
}
