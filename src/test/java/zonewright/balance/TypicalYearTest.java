package zonewright.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class TypicalYearTest {
  /** Whatever the months are, the days come to them. */
  @Property(tries = 200)
  void daysComeToTheirMonths(
      @ForAll @Size(12) List<@DoubleRange(min = 0, max = 12) Double> months,
      @ForAll @Size(12) List<@DoubleRange(min = 0, max = 400) Double> wet) {
    double[] daily = months.stream().mapToDouble(Double::doubleValue).toArray();
    double[] rain = wet.stream().mapToDouble(Double::doubleValue).toArray();
    DaysOfWeather year = TypicalYear.of(daily, rain);
    double[] et = new double[12];
    double[] fell = new double[12];
    int[] count = new int[12];
    for (int day = 0; day < year.size(); day++) {
      et[year.month(day)] += year.evapotranspiration(day);
      fell[year.month(day)] += year.rain(day);
      count[year.month(day)]++;
      assertThat(year.evapotranspiration(day)).isNotNegative();
    }
    for (int month = 0; month < 12; month++) {
      assertThat(et[month] / count[month]).isEqualTo(daily[month], within(1e-9));
      assertThat(fell[month]).isEqualTo(rain[month], within(1e-9));
    }
  }

  /** From one day to the next it goes a small step, over the new year too. */
  @Test
  void theLineIsSmooth() {
    double[] daily = {1.2, 1.8, 2.9, 4.1, 5.4, 6.3, 6.8, 6.1, 4.8, 3.1, 1.7, 1.1};
    DaysOfWeather year = TypicalYear.of(daily, new double[12]);
    for (int day = 0; day < year.size(); day++) {
      double next = year.evapotranspiration((day + 1) % year.size());
      assertThat(Math.abs(next - year.evapotranspiration(day))).isLessThan(0.08);
    }
  }
}
