package zonewright.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Patterns of years against plain counts; invented weather. */
class YearPatternsTest {
  /** Each day asks a quarter of its month's number in mm, each year 0.1 mm a day more, a week 5. */
  private static String text(int from, int to, LocalDate hot) {
    StringBuilder text = new StringBuilder("Date,ET (mm)\n");
    for (LocalDate day = LocalDate.of(from, 1, 1); day.getYear() <= to; day = day.plusDays(1)) {
      boolean week = !day.isBefore(hot) && day.isBefore(hot.plusDays(7));
      double depth = day.getMonthValue() / 4.0 + (day.getYear() - 2000) / 10.0 + (week ? 5 : 0);
      text.append(String.format(Locale.ROOT, "%s,%.2f%n", day, depth));
    }
    return text.toString();
  }

  private static YearsOfWeather years() throws WeatherProblem {
    return new YearsOfWeather(WeatherText.read(text(2001, 2005, LocalDate.of(2003, 7, 30))));
  }

  @Test
  void theBandHasTheDriestTheMiddleAndTheWettestYear() throws WeatherProblem {
    YearPatterns.Band band = YearPatterns.band(years()).orElseThrow();
    assertThat(band.driest().year()).isEqualTo(2005);
    assertThat(band.middle().year()).isEqualTo(2003);
    assertThat(band.wettest().year()).isEqualTo(2001);
    assertThat(band.lowest().get(0)).isCloseTo(31 * (0.25 + 0.1), within(1e-9));
    assertThat(band.highest().get(0)).isCloseTo(31 * (0.25 + 0.5), within(1e-9));
    // two days of the hot week lie in July 2003
    assertThat(band.highest().get(6)).isCloseTo(31 * (1.75 + 0.3) + 2 * 5, within(1e-9));
  }

  @Test
  void theHottestWeekMayLieInTwoMonths() throws WeatherProblem {
    assertThat(YearPatterns.hottestWeeks(years().record()))
        .hasSize(5)
        .anySatisfy(
            week -> {
              assertThat(week.first()).isEqualTo(LocalDate.of(2003, 7, 30));
              assertThat(week.depth())
                  .isCloseTo(2 * (1.75 + 0.3 + 5) + 5 * (2.0 + 0.3 + 5), within(1e-9));
            });
  }

  @Test
  void aUsualDayIsTheMeanOfTheYearsThatHaveIt() throws WeatherProblem {
    double[][] days = YearPatterns.usualDays(years().record());
    assertThat(days[0][0]).isCloseTo(0.25 + 0.3, within(1e-9));
    assertThat(days[6][29]).isCloseTo(1.75 + 0.3 + 1, within(1e-9));
    assertThat(days[1][28]).isCloseTo(0.5 + 0.4, within(1e-9));
    assertThat(days[1][29]).isNaN();
  }

  @Test
  void withoutAWholeYearThereIsNoBand() throws WeatherProblem {
    String half = text(2001, 2001, LocalDate.of(1999, 1, 1)).substring(0, 2000);
    YearsOfWeather years =
        new YearsOfWeather(WeatherText.read(half.substring(0, half.lastIndexOf('\n'))));
    assertThat(YearPatterns.band(years)).isEmpty();
    assertThat(YearPatterns.hottestWeeks(years.record())).hasSize(1);
  }
}
