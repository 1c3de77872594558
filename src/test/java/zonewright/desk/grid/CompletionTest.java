package zonewright.desk.grid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CompletionTest {
  private static final List<String> SOILS = List.of("sand", "sandy loam", "loam", "clay loam");

  @Test
  void theWordItselfComesFirst() {
    assertThat(Completion.fitting(SOILS, "loam"))
        .containsExactly("loam", "sandy loam", "clay loam");
  }

  @Test
  void severalWordsFitInAnyOrder() {
    List<String> days = List.of("Mon Tue Wed", "Mon Wed", "Wed");
    assertThat(Completion.fitting(days, "wed, mon")).containsExactly("Mon Wed", "Mon Tue Wed");
    assertThat(Completion.fitting(days, "Wednesday"))
        .containsExactly("Wed", "Mon Tue Wed", "Mon Wed");
  }

  @Test
  void capitalsDoNotMatter() {
    assertThat(Completion.fitting(SOILS, "SANDY")).containsExactly("sandy loam");
  }

  @Test
  void nothingTypedOffersAll() {
    assertThat(Completion.fitting(SOILS, "")).isEqualTo(SOILS);
  }

  @Test
  void whatIsInNoWordOffersNothing() {
    assertThat(Completion.fitting(SOILS, "peat")).isEmpty();
  }
}
