package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values typed into a design by a command, up to a proposal to sign. All of it is invented. */
class SetCommandTest {
  @TempDir Path folder;

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void aListOfZonesAndAPriceBookBecomeAProposalByFourCommands() throws IOException {
    Path zones = folder.resolve("zones.csv");
    Path prices = folder.resolve("prices.csv");
    StringBuilder list =
        new StringBuilder("Zone,Where,Area (ft2),Plant type,Emitter,Emitters,Flow each (gpm)\n");
    for (int zone = 1; zone <= 14; zone++) {
      list.append("%s,Lawn %s,900,cool-season turf,rotor,4,2.5%n".formatted(zone, zone));
    }
    Files.writeString(zones, list.toString());
    Files.writeString(
        prices,
        """
        SKU,Description,Section,Unit price,Labour hours,Counted by,Counted in,Emitter
        R-1,Rotor,heads and emitters,$14.40,0.25,emitters,each,rotor
        """);
    String job = file("job.xlsx");

    CommandRun taken = CommandRun.of("import", zones.toString(), job);
    assertThat(taken.code()).isZero();
    assertThat(taken.out()).contains("with 14 zones of the list", "The climate is not known");
    assertThat(
            CommandRun.of(
                    "prices",
                    "--from",
                    job,
                    "--book",
                    prices.toString(),
                    "--into",
                    job,
                    "--replace")
                .err())
        .doesNotContain("kept as it stands");
    CommandRun set =
        CommandRun.of(
            "set",
            job,
            "--from",
            job,
            "--replace",
            "Project=Invented grounds",
            "Climate place=CIMIS zone 9",
            "Labour rate=60",
            "Overhead=10",
            "Client=M. Brook",
            "Currency=USD");
    assertThat(set.code()).isZero();
    assertThat(CommandRun.of("proposal", file("offer.pdf"), "--from", job).code()).isZero();
    // 56 rotors at 14.40 are 806.40, 14 hours at 60 are 840.00: 1,646.40, and a tenth on it.
    assertThat(CommandRun.of("calculate", job, "--sheet", "Estimate", "--csv").out())
        .contains("1811.04");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Labour rate=many | Labour rate: “many” is not a number",
        "Reference ET=1,2,3 | Reference ET: the sheet Months has 12 rows, and 3 values are given.",
        "Peak reference ET=1 | Peak reference ET is calculated, and nothing can be typed there.",
        "Zones: Area=900 | Area: the sheet Zones has 0 rows, and 1 values are given.",
        "Lark=1 | There is no column “Lark”",
        "Client | “Client” gives no value",
      })
  void whatCannotBeTypedIsRefusedAndNothingIsWritten(String value, String said) {
    CommandRun run = CommandRun.of("set", file("new.xlsx"), value);

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains(said);
    assertThat(folder.resolve("new.xlsx")).doesNotExist();
  }
}
