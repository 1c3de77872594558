package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A retrofit from as found to the printed proposal, by commands alone. */
class RetrofitCommandsTest {
  @TempDir Path folder;

  private String path(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void fromAsFoundToTheProposal() throws IOException {
    CommandRun prices = CommandRun.of("prices", "--sample", "campus-retrofit");
    assertThat(prices.code()).isZero();
    Files.writeString(
        folder.resolve("book.csv"), prices.out().replace("Rotating nozzle,", "Nozzle that turns,"));

    CommandRun found =
        CommandRun.of(
            "retrofit", "--as-proposed", path("start.xlsx"), "--sample", "campus-retrofit");
    assertThat(found.code()).isZero();
    CommandRun nothing =
        CommandRun.of(
            "calculate", path("start.xlsx"), "--sheet", "Found", "--columns", "Zone,What changes");
    assertThat(nothing.out().lines().filter(line -> line.endsWith("nothing"))).hasSize(24);

    CommandRun priced =
        CommandRun.of(
            "prices",
            "--from",
            path("start.xlsx"),
            "--book",
            path("book.csv"),
            "--into",
            path("priced.xlsx"));
    assertThat(priced.code()).isZero();
    CommandRun parts =
        CommandRun.of(
            "calculate", path("priced.xlsx"), "--sheet", "Parts", "--columns", "Item,Price");
    assertThat(parts.out()).contains("Nozzle that turns").contains("Rotating nozzle");

    CommandRun pack =
        CommandRun.of(
            "pack",
            path("proposal.xlsx"),
            "--from",
            path("priced.xlsx"),
            "--client",
            "--sheets",
            "proposal,retrofit");
    assertThat(pack.code()).as(pack.err()).isZero();
    assertThat(folder.resolve("proposal.xlsx")).exists();
  }

  @Test
  void aPriceBookGoesOutAndInAsAWorkbook() throws IOException {
    assertThat(
            CommandRun.of("prices", "--sample", "campus-retrofit", "--to", path("book.xlsx"))
                .code())
        .isZero();
    CommandRun in =
        CommandRun.of("prices", "--book", path("book.xlsx"), "--into", path("new.xlsx"));
    assertThat(in.code()).as(in.err()).isZero();
    assertThat(CommandRun.of("prices", "--from", path("new.xlsx")).out())
        .contains("Mobilization and site protection,general,job,180");
    assertThat(
            CommandRun.of("prices", "--sample", "campus-retrofit", "--to", path("book.xlsx")).err())
        .contains("--replace");
    assertThat(CommandRun.of("prices", "--to", path("book.txt")).err())
        .contains("ends in .csv or .xlsx");
    CommandRun text =
        CommandRun.of("prices", "--sample", "campus-retrofit", "--to", path("book.csv"));
    assertThat(text.code()).isZero();
    assertThat(Files.readString(folder.resolve("book.csv"))).startsWith("Item,Section,Sold by");
  }

  @Test
  void whatIsWrongWithAPriceBookIsSaid() throws IOException {
    Files.writeString(folder.resolve("bad.csv"), "Item,Prize\nValve,2\n");
    CommandRun run =
        CommandRun.of(
            "prices",
            "--sample",
            "campus-retrofit",
            "--book",
            path("bad.csv"),
            "--into",
            path("out.xlsx"));
    assertThat(run.code()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).contains("--match \"Prize=Price\"   or   --leave \"Prize\"");
    assertThat(folder.resolve("out.xlsx")).doesNotExist();
    assertThat(CommandRun.of("prices", "--into", path("out.xlsx")).err())
        .contains("--book FILE beside --into PATH");
    assertThat(CommandRun.of("retrofit", path("x.xlsx")).err()).contains("holds no zones to copy");
  }

  /** A supplier's list and a list of zones as found, both invented, by commands alone. */
  @Test
  void whatAPriceBookChangesIsToldBeforeItIsTakenAndFoundZonesComeFromAList() throws IOException {
    Files.writeString(
        folder.resolve("supplier.csv"),
        """
        Part number;Description;Unit price;Weight
        M1;Mobilization and site protection;$195,00;1
        B1;Boulder;$41,20;90
        B2;Gravel;;5
        """);
    String[] told = {
      "prices", "--sample", "campus-retrofit", "--book", path("supplier.csv"), "--leave", "Weight"
    };
    CommandRun run = CommandRun.of(told);
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.out())
        .contains("1 item to change, 2 items to add, 0 items as they are.")
        .contains("Mobilization and site protection, Price: 180 → 195")
        .contains("Boulder: new")
        .doesNotContain("Written");
    assertThat(run.err()).contains("“Unit price” is taken for Price.");

    Files.writeString(
        folder.resolve("walk.csv"), "Zone,Area,Minutes a week at present\n1,900,75\n2,1200,90\n");
    CommandRun found =
        CommandRun.of("import", path("walk.csv"), path("found.xlsx"), "--sheet", "Found");
    assertThat(found.code()).as(found.err()).isZero();
    assertThat(
            CommandRun.of(
                    "calculate",
                    path("found.xlsx"),
                    "--sheet",
                    "Found",
                    "--columns",
                    "Zone,Area,Minutes a week at present",
                    "--csv")
                .out())
        .contains("1,900,75", "2,1200,90");
    assertThat(CommandRun.of("import", path("walk.csv"), path("no.xlsx"), "--sheet", "Site").err())
        .contains("Zones or Found");
  }
}
