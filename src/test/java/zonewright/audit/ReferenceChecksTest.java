package zonewright.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import zonewright.units.UnitSystem;

/**
 * Every reference check holds, whichever unit system the design is kept in; source and status stand
 * in the table itself.
 */
class ReferenceChecksTest {
  static Stream<Arguments> checks() {
    return ReferenceChecks.all().stream()
        .flatMap(
            check ->
                Stream.of(UnitSystem.values())
                    .map(system -> Arguments.of(check.example(), system, check)));
  }

  @ParameterizedTest(name = "{0} ({1})")
  @MethodSource("checks")
  void holds(String example, UnitSystem system, ReferenceCheck check) {
    ReferenceCheck.Result result = check.in(system);
    assertThat(result.holds())
        .as(
            "%s: expected %s ± %s, got %s",
            example, check.expected(), check.tolerance(), result.got())
        .isTrue();
  }

  @Test
  void everyCheckNamesItsSourceAndWhatItIsWorth() {
    assertThat(ReferenceChecks.all())
        .hasSizeGreaterThan(80)
        .allSatisfy(
            check -> {
              assertThat(check.source()).isNotBlank();
              assertThat(check.status())
                  .isIn(List.of("verified", "verified (secondary)", "derived", "from memory"));
            });
  }

  @Test
  void aWrongValueWouldBeNoticed() {
    ReferenceCheck check = ReferenceChecks.all().get(0);
    assertThat(new ReferenceCheck.Result(check, check.expected() + 2 * check.tolerance()).holds())
        .isFalse();
    assertThat(new ReferenceCheck.Result(check, Double.NaN).holds()).isFalse();
  }
}
