package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import zonewright.climate.WeatherSite;
import zonewright.design.Design;
import zonewright.workbook.DesignFile;
import zonewright.workbook.DesignFileException;

class PlacesCommandTest {
  @Test
  void placesAreListedByWordsOrByDistance() {
    CommandRun named = CommandRun.of("places", "thailand");
    assertThat(named.code()).isZero();
    assertThat(named.out()).contains("Nakhon Ratchasima").doesNotContain("Moab");
    assertThat(named.out()).contains("published").contains("worked out by Penman-Monteith");
    CommandRun near = CommandRun.of("places", "--near", "38.6,-109.5");
    assertThat(near.out().lines().filter(line -> line.contains("km")).findFirst().orElseThrow())
        .startsWith("Moab")
        .contains("0 km (0 mi)");
    assertThat(near.out()).doesNotContain("CIMIS zone");
  }

  @Test
  void aPlaceIsTakenIntoADesignByItsName(@TempDir Path folder) throws DesignFileException {
    Path garden = folder.resolve("garden.xlsx");
    CommandRun run = CommandRun.of("places", "oklahoma", "city", "--into", garden.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("reference ET of Oklahoma City");
    Design taken = DesignFile.read(garden).design();
    assertThat(taken.book().outcome(WeatherSite.WEATHER_FROM.reference(), 0).text())
        .contains("Oklahoma City")
        .contains("SWAT");
    CommandRun vague =
        CommandRun.of("places", "oklahoma", "--into", folder.resolve("no.xlsx").toString());
    assertThat(vague.code()).isEqualTo(ExitCode.USAGE);
    assertThat(vague.err()).contains("say more of the name");
  }

  @Test
  void whatIsNoPointAndWhatIsNowhereAreToldSo() {
    CommandRun point = CommandRun.of("places", "--near", "north of town");
    assertThat(point.code()).isEqualTo(ExitCode.USAGE);
    assertThat(point.err()).contains("38.1,-121.3");
    assertThat(CommandRun.of("places", "--near", "95,0").code()).isEqualTo(ExitCode.USAGE);
    assertThat(CommandRun.of("places", "atlantis").err()).contains("places");
  }
}
