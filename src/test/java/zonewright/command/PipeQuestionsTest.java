package zonewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Single questions about supply, pipes and wires, as a student would ask them. */
final class PipeQuestionsTest {
  // Friction 5.50 ft in 100 ft is 2.38 psi, Illinois Administrative Code title 77 part 906
  // (verified); Bulletin 912 prints 3.16 ft/s for 3 gpm in 1/2 in pipe (verified), which the
  // equation gives as 3.17; the
  // meter loses 5.3 psi at 30 gpm by the AWWA table (verified, secondary); factor and drop derived.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Main friction | Main size=1 in;Main length=100 ft;Main fittings=0;Flow in the main at once=10 gpm | 2.4 psi",
        "Main velocity | Main inside diameter=0.622 in;Flow in the main at once=3 gpm | 3.17 ft/s",
        "Outlet factor | Lateral outlets=10 | 0.402",
        "Meter loss | Water meter=1 in;Largest flow at once=30 gpm | 5.3 psi",
        "Valves needed | Available flow=16 gpm;Emitters=3;Zone flow=30 gpm | 3",
        "Valve loss | Valve of the zone=1 in valve;Flow of a valve=20 gpm | 4 psi",
        "Voltage drop | Wire=18 AWG;Wire run=500 ft;Current to open a valve=0.4 A | 3.11 V",
        "Smallest wire | Wire run=800 ft;Current to open a valve=0.4 A | 16 AWG",
        "Service line friction | Service pipe=PVC Schedule 40;Service size=1-1/4 in;Service length=100 ft;Largest flow at once=20 gpm | 2.28 psi"
      })
  void isAnswered(String asked, String given, String answer) {
    String[] arguments = ("answer;" + asked + ";" + given).split(";");
    CommandRun run = CommandRun.of(arguments);

    assertThat(run.err()).isEmpty();
    assertThat(run.answer()).isEqualTo(asked + " = " + answer);
    assertThat(run.code()).isZero();
  }

  @Test
  void aFlowAboveTheSafeMaximumOfTheMeterIsRefused() {
    CommandRun run =
        CommandRun.of("answer", "Meter loss", "Water meter=5/8 in", "Largest flow at once=25 gpm");

    assertThat(run.code()).isNotZero();
    assertThat(run.out() + run.err()).contains("above the safe maximum of the meter");
  }

  @Test
  void whatIsStillNeededIsNamed() {
    CommandRun run = CommandRun.of("answer", "Main friction", "Main size=1 in");

    assertThat(run.code()).isNotZero();
    assertThat(run.out() + run.err()).contains("Main length");
  }
}
