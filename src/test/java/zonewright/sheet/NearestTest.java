package zonewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

final class NearestTest {
  private static final List<String> NAMES =
      List.of("Area", "Run time a week", "Run time a watering day", "Root depth", "Slope");

  @Test
  void namesThatStartWithWhatWasWrittenComeFirst() {
    assertThat(Nearest.to("run time", NAMES, 3))
        .containsExactly("Run time a week", "Run time a watering day");
  }

  @Test
  void aSlipOfAFingerIsForgiven() {
    assertThat(Nearest.to("Slpoe", NAMES, 3)).containsExactly("Slope");
  }

  @Test
  void thereIsAlwaysOneName() {
    assertThat(Nearest.to("xyzxyzxyzxyz", NAMES, 3)).hasSize(1);
    assertThat(Nearest.to("x", List.of(), 3)).isEmpty();
  }
}
