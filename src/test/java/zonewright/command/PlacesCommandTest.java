package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlacesCommandTest {
  @Test
  void placesAreListedByWordsOrByDistance() {
    CommandRun named = CommandRun.of("places", "thailand");
    assertThat(named.code()).isZero();
    assertThat(named.out()).contains("Nakhon Ratchasima").doesNotContain("Moab");
    CommandRun near = CommandRun.of("places", "--near", "38.6,-109.5");
    assertThat(near.out().lines().filter(line -> line.contains("km")).findFirst().orElseThrow())
        .startsWith("Moab")
        .contains("0 km (0 mi)");
    assertThat(near.out()).doesNotContain("CIMIS zone");
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
