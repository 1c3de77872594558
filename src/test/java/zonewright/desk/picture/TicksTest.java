package zonewright.desk.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class TicksTest {
  @Test
  void areRoundNumbers() {
    assertThat(Ticks.upTo(100, 5)).containsExactly(0.0, 20.0, 40.0, 60.0, 80.0, 100.0);
    assertThat(Ticks.upTo(0.48, 4)).hasSize(3).contains(0.2);
  }

  @Property
  void areNeverMoreThanAskedForAndNeverPastTheEnd(
      @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 1e6) double end,
      @ForAll @IntRange(min = 1, max = 12) int most) {
    List<Double> ticks = Ticks.upTo(end, most);

    assertThat(ticks).hasSizeBetween(1, most + 1);
    assertThat(ticks.get(ticks.size() - 1)).isLessThanOrEqualTo(end * (1 + 1e-8));
  }
}
